#include "platform/memo/player.h"

namespace undercowl::platform {

void Player::tell(bool playing, int milliseconds, const QString& problem) {
    if (playing == playing_ && milliseconds == milliseconds_ && problem == problem_)
        return;
    playing_ = playing;
    milliseconds_ = milliseconds;
    problem_ = problem;
    emit changed();
}

} // namespace undercowl::platform
