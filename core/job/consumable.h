// Whether a fluid may go into the machine: its grade against what the machine allows, and how long brake
// fluid has stood open. Said before it is used.
#pragma once

#include "core/job/message.h"
#include "core/job/model.h"
#include "core/units/date.h"

#include <vector>

namespace undercowl::job {

// Brake fluid on glycol (DOT 3, 4, 5.1) draws water out of the air through every opening. How long an opened
// container is still good is for the shop to set; a year is common practice, no source.
inline constexpr int brakeFluidDaysOpen = 365;

// Everything that speaks against it; empty: nothing is known to. 'today' is the day of use. Looks at the
// words of ConsumableUse: "brake fluid" in 'what', grades as "DOT 4", "dot5.1", "SAE 10W-40", several in
// 'limit' parted by commas or "or". That a machine's grade is not known is said for brake fluid, where a
// wrong one can kill; an unknown grade of grease is not.
[[nodiscard]] std::vector<Message> againstUse(const ConsumableUse& use, units::Date today,
                                              int daysOpen = brakeFluidDaysOpen);

} // namespace undercowl::job
