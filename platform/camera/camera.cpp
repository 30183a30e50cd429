#include "platform/camera/camera.h"

#include <algorithm>
#include <utility>

namespace undercowl::platform {

void Camera::setState(State state, const QString& problem) {
    if (state_ == state && problem_ == problem)
        return;
    state_ = state;
    problem_ = problem;
    if (!started()) { // the device is released: its lamp with it
        if (std::exchange(torch_, false))
            emit torchChanged();
        if (std::exchange(zoom_, 1.0) != 1.0)
            emit zoomChanged();
    }
    emit stateChanged();
}

void Camera::setAbilities(const CameraAbilities& abilities) {
    if (abilities_ == abilities)
        return;
    abilities_ = abilities;
    emit abilitiesChanged();
}

bool Camera::started() const {
    return state_ == State::Starting || state_ == State::Ready || state_ == State::Busy;
}

void Camera::focusAt(QPointF at) {
    if (started() && abilities_.focus)
        aimFocus({std::clamp(at.x(), 0.0, 1.0), std::clamp(at.y(), 0.0, 1.0)});
}

void Camera::setTorch(bool on) {
    if (!started() || !abilities_.torch || torch_ == on)
        return;
    torch_ = on;
    switchTorch(on);
    emit torchChanged();
}

void Camera::setZoom(double factor) {
    const double kept = std::clamp(factor, 1.0, std::max(1.0, abilities_.mostZoom));
    if (!started() || zoom_ == kept)
        return;
    zoom_ = kept;
    moveZoom(kept);
    emit zoomChanged();
}

void Camera::aimFocus(QPointF /*at*/) {}
void Camera::switchTorch(bool /*on*/) {}
void Camera::moveZoom(double /*factor*/) {}

} // namespace undercowl::platform
