#include "platform/screen/screen.h"

namespace undercowl::platform {

void Screen::setAwake(bool awake) {
    if (awake == awake_)
        return;
    awake_ = awake;
    emit changed();
    keep(awake);
}

void Screen::tell(const QString& problem) {
    if (problem == problem_)
        return;
    problem_ = problem;
    emit changed();
}

} // namespace undercowl::platform
