#include "qml/shell/cameraholder.h"

namespace undercowl::ui {

using State = platform::Camera::State;

CameraHolder::~CameraHolder() {
    if (camera_ != nullptr && session_ != nullptr && active_)
        camera_->stop();
}

void CameraHolder::componentComplete() {
    if (active_ && camera_ != nullptr)
        camera_->start();
}

void CameraHolder::setCamera(platform::Camera* camera) {
    if (camera_ == camera)
        return;
    if (camera_ != nullptr)
        camera_->disconnect(this);
    camera_ = camera;
    if (camera_ != nullptr) {
        connect(camera_, &platform::Camera::stateChanged, this, &CameraHolder::stateChanged);
        hookUp(*camera_);
    }
    emit cameraChanged();
    emit stateChanged();
}

void CameraHolder::setActive(bool active) {
    if (active_ == active)
        return;
    active_ = active;
    if (camera_ != nullptr && session_ != nullptr)
        active_ ? camera_->start() : camera_->stop();
    emit activeChanged();
}

bool CameraHolder::hasCamera() const {
    return camera_ != nullptr && camera_->state() != State::NoCamera && camera_->state() != State::Denied &&
           camera_->state() != State::Failed;
}

} // namespace undercowl::ui
