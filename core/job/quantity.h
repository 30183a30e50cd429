// What kind of quantity the words of a measurement mean.
#pragma once

#include "core/units/dimension.h"

#include <optional>
#include <string_view>

namespace undercowl::job {

// "front tyre pressure" is a gauge pressure, "tread" a length. In English, German, Italian, French and
// Spanish; the words of the trade are from memory. Nothing where they do not tell, tell of two, or may mean
// the tension of a chain, belt, spoke or spring.
[[nodiscard]] std::optional<units::Dimension> dimensionMeant(std::string_view what);

} // namespace undercowl::job
