#include "qml/shell/cameraholder.h"

#include <QGuiApplication>

namespace undercowl::ui {

using State = platform::Camera::State;

CameraHolder::~CameraHolder() {
    if (camera_ == nullptr)
        return;
    camera_->disconnect(this); // what it tells while it stops is for a derived part that is gone
    if (held_)
        camera_->stop();
}

void CameraHolder::componentComplete() {
    if (const auto* app = qobject_cast<QGuiApplication*>(QCoreApplication::instance()))
        connect(app, &QGuiApplication::applicationStateChanged, this, [this](Qt::ApplicationState state) {
            // Inactive is no reason: another window may be beside this one.
            away_ = state == Qt::ApplicationSuspended || state == Qt::ApplicationHidden;
            hold();
        });
    hold();
}

void CameraHolder::hold() {
    const bool wanted = active_ && !away_;
    if (camera_ == nullptr || session_ == nullptr || held_ == wanted)
        return;
    held_ = wanted;
    held_ ? camera_->start() : camera_->stop();
    if (!held_)
        emit released();
}

void CameraHolder::setCamera(platform::Camera* camera) {
    if (camera_ == camera)
        return;
    if (camera_ != nullptr)
        camera_->disconnect(this);
    camera_ = camera;
    held_ = false; // another one
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
    hold();
    emit activeChanged();
}

bool CameraHolder::live() const {
    return camera_ != nullptr && (camera_->state() == State::Ready || camera_->state() == State::Busy);
}

bool CameraHolder::hasCamera() const {
    return camera_ != nullptr && camera_->state() != State::NoCamera && camera_->state() != State::Denied &&
           camera_->state() != State::Failed;
}

} // namespace undercowl::ui
