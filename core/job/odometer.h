// Odometers, as people copy them off the dial.
#pragma once

#include "core/units/parse.h"

#include <optional>
#include <string>

namespace undercowl::job {

// Why the reading is not taken as typed: an odometer shows whole kilometres or miles, at most tenths beside
// them, so that in "14.250" the point may part thousands, and which is meant cannot be told. With the remedy;
// nothing for a reading that is clear. (Common practice, no source.)
[[nodiscard]] std::optional<std::string> odometerDoubt(const units::Typed& typed);

} // namespace undercowl::job
