#include "platform/speaker/speaker.h"

namespace undercowl::platform {

void Speaker::tell(bool speaking, const QString& problem) {
    if (speaking == speaking_ && problem == problem_)
        return;
    speaking_ = speaking;
    problem_ = problem;
    emit changed();
}

} // namespace undercowl::platform
