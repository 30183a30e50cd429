#include "platform/signals/devicesignaller.h"

#include "platform/plugins/plugin.h"

namespace undercowl::platform {

void DeviceSignaller::give(Signal signal) {
    if (signaller_ == nullptr) {
        QString missing; // whoever wants a voice or a memo is told; a tone is no more than a help
        const auto* maker = pluginFor<SignallerMaker>(QStringLiteral("signals"), missing);
        if (maker == nullptr)
            return;
        signaller_ = maker->systemSignaller();
    }
    signaller_->give(signal);
}

} // namespace undercowl::platform
