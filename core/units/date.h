// Calendar dates as ISO 8601 writes them.
#pragma once

#include "core/units/quantity.h"

#include <chrono>
#include <string>
#include <string_view>
#include <tl/expected.hpp>

namespace undercowl::units {

using Date = std::chrono::year_month_day;

// "2026-11-25". Refused with the remedy: other orders ("03/04/26" is two dates), days that do not exist,
// years outside 1885 to 2200 (no motorcycle is older).
[[nodiscard]] tl::expected<Date, UnitError> parseDate(std::string_view text);

// "2026-11-25".
[[nodiscard]] std::string formatDate(Date date);

// Whole days from the first to the second; negative if the second is earlier.
[[nodiscard]] int daysBetween(Date from, Date to);

} // namespace undercowl::units
