// What a rider's life hangs on, and which part belongs to which finding, by the words of the trade in five
// languages. Common words, no source.
#pragma once

#include <string_view>

namespace undercowl::job {

// Brakes, wheels, steering, suspension: what another pair of eyes looks at as well.
[[nodiscard]] bool holdsOrStops(std::string_view text);

// That, and what is measured of it: tread, tyres, pads, discs, linings.
[[nodiscard]] bool concernsSafety(std::string_view text);

// Both name the same thing: a word of theirs that is no place ("rear", "left") is the same, "brake" only
// where one has no other, and neither names the other end or side.
[[nodiscard]] bool nameTheSame(std::string_view text, std::string_view other);

} // namespace undercowl::job
