#include "platform/listener/devicelistener.h"

#include "platform/plugins/plugin.h"

namespace undercowl::platform {

bool DeviceListener::load() {
    if (driver_ != nullptr)
        return true;
    QString problem;
    const auto* maker = pluginFor<ListenerMaker>(QStringLiteral("listener"), problem);
    if (maker == nullptr) {
        setState(State::Failed, problem);
        return false;
    }
    driver_ = maker->microphone();
    connect(driver_.get(), &Listener::stateChanged, this,
            [this] { setState(driver_->state(), driver_->problem()); });
    connect(driver_.get(), &Listener::woken, this, &Listener::woken);
    connect(driver_.get(), &Listener::heard, this, &Listener::heard);
    return true;
}

void DeviceListener::start() {
    if (load())
        driver_->start();
}

void DeviceListener::stop() {
    if (driver_ != nullptr)
        driver_->stop();
}

void DeviceListener::setHandsFree(bool on) {
    if (driver_ != nullptr || (on && load()))
        driver_->wantHandsFree(this, on);
}

void DeviceListener::setDeaf(bool deaf) {
    if (driver_ != nullptr)
        driver_->setDeaf(deaf);
}

} // namespace undercowl::platform
