#include "platform/camera/devicecamera.h"

#include "platform/plugins/plugin.h"

namespace undercowl::platform {

bool DeviceCamera::load() {
    if (driver_ != nullptr)
        return true;
    QString problem;
    const auto* maker = pluginFor<CameraMaker>(QStringLiteral("camera"), problem);
    if (maker == nullptr) {
        setState(State::Failed, problem);
        return false;
    }
    driver_ = maker->deviceCamera();
    connect(driver_.get(), &Camera::stateChanged, this,
            [this] { setState(driver_->state(), driver_->problem()); });
    connect(driver_.get(), &Camera::abilitiesChanged, this, [this] { setAbilities(driver_->abilities()); });
    connect(driver_.get(), &Camera::frame, this, &Camera::frame);
    connect(driver_.get(), &Camera::captured, this, &Camera::captured);
    connect(driver_.get(), &Camera::captureFailed, this, &Camera::captureFailed);
    return true;
}

void DeviceCamera::start() {
    if (load())
        driver_->start();
}

void DeviceCamera::stop() {
    if (driver_ != nullptr)
        driver_->stop();
    else
        setState(State::Off);
}

void DeviceCamera::capture(const QString& file) {
    if (driver_ != nullptr)
        driver_->capture(file);
}

// Only where the driver said that it can, hence once there is one.
void DeviceCamera::aimFocus(QPointF at) {
    driver_->focusAt(at);
}

void DeviceCamera::switchTorch(bool on) {
    driver_->setTorch(on);
}

void DeviceCamera::moveZoom(double factor) {
    driver_->setZoom(factor);
}

} // namespace undercowl::platform
