#include "platform/listener/listener.h"

namespace undercowl::platform {

void Listener::setState(State state, const QString& problem) {
    if (state == state_ && problem == problem_)
        return;
    state_ = state;
    problem_ = problem;
    emit stateChanged();
}

} // namespace undercowl::platform
