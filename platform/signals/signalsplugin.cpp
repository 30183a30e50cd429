#include "platform/signals/signalsplugin.h"

#include "platform/signals/loudspeakersignals.h"
#include "platform/signals/vibration.h"

namespace undercowl::platform {

std::unique_ptr<Signaller> SignalsPlugin::systemSignaller() const {
    return withVibration(std::make_unique<LoudspeakerSignals>());
}

} // namespace undercowl::platform
