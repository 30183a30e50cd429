#include "platform/speaker/speakerplugin.h"

#include "platform/speaker/systemvoice.h"

namespace undercowl::platform {

std::unique_ptr<Speaker> SpeakerPlugin::systemVoice() const {
    return std::make_unique<SystemVoice>();
}

} // namespace undercowl::platform
