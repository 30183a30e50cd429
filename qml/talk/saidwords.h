// What was said, in the words of the screen.
#pragma once

#include "core/talk/intent.h"
#include "platform/ear/ear.h"

#include <QString>

namespace undercowl::ui {

// "torque", "front tyre": what a reading is of.
[[nodiscard]] QString words(talk::Measured what);
// "torque 25 N.m", "bag 7", "grey, red tracer, blade 6.3, stop lamp"; a command by the word that is said for
// it, which is English.
[[nodiscard]] QString words(const talk::Intent& intent);
// Why nothing was taken, and what to do.
[[nodiscard]] QString words(platform::NotHeard why);

} // namespace undercowl::ui
