// The day by the device's clock.
#pragma once

#include "core/units/date.h"

namespace undercowl::platform {

// In local time.
[[nodiscard]] units::Date today();

} // namespace undercowl::platform
