#include "platform/camera/camera.h"

namespace undercowl::platform {

void Camera::setState(State state, const QString& problem) {
    if (state_ == state && problem_ == problem)
        return;
    state_ = state;
    problem_ = problem;
    emit stateChanged();
}

} // namespace undercowl::platform
