#include "platform/memo/recorder.h"

namespace undercowl::platform {

void Recorder::setState(State state, const QString& problem) {
    if (state == state_ && problem == problem_)
        return;
    state_ = state;
    problem_ = problem;
    emit stateChanged();
}

void Recorder::tell(double level, int milliseconds) {
    level_ = level;
    milliseconds_ = milliseconds;
    emit heard();
}

} // namespace undercowl::platform
