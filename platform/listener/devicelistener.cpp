#include "platform/listener/devicelistener.h"

#include "platform/plugins/plugin.h"

namespace undercowl::platform {

void DeviceListener::start() {
    if (driver_ == nullptr) {
        QString problem;
        const auto* maker = pluginFor<ListenerMaker>(QStringLiteral("listener"), problem);
        if (maker == nullptr) {
            setState(State::Failed, problem);
            return;
        }
        driver_ = maker->microphone();
        connect(driver_.get(), &Listener::stateChanged, this,
                [this] { setState(driver_->state(), driver_->problem()); });
        connect(driver_.get(), &Listener::heard, this, &Listener::heard);
    }
    driver_->start();
}

void DeviceListener::stop() {
    if (driver_ != nullptr)
        driver_->stop();
}

} // namespace undercowl::platform
