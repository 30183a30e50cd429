#include "platform/listener/listener.h"

namespace undercowl::platform {

void Listener::setState(State state, const QString& problem) {
    if (state == state_ && problem == problem_)
        return;
    state_ = state;
    problem_ = problem;
    emit stateChanged();
}

void Listener::wantHandsFree(const QObject* who, bool wants) {
    if (wants)
        wanting_.insert(who);
    else
        wanting_.erase(who);
    setHandsFree(!wanting_.empty());
}

} // namespace undercowl::platform
