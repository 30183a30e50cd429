#include "platform/memo/memoplugin.h"

#include "platform/memo/loudspeakerplayer.h"
#include "platform/memo/microphonerecorder.h"

namespace undercowl::platform {

std::unique_ptr<Recorder> MemoPlugin::microphone() const {
    return std::make_unique<MicrophoneRecorder>();
}

std::unique_ptr<Player> MemoPlugin::loudspeaker() const {
    return std::make_unique<LoudspeakerPlayer>();
}

} // namespace undercowl::platform
