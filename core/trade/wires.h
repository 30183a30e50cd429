// Copper wire and the fuses before it.
#pragma once

#include <optional>
#include <span>
#include <string_view>

namespace undercowl::trade {

// Largest resistance of a class 5 plain copper conductor at 20 degC, mohm/m, IEC 60228. Nothing for other
// areas (mm2).
[[nodiscard]] std::optional<double> classFiveResistance(double area);
// Solid annealed copper at 20 degC, mohm/m: 17.241/area (IEC 60028).
[[nodiscard]] double solidResistance(double area);
// R20 = R(t) x k: k = 1/(1 + 0.004 (t - 20)), IEC 60228 temperature correction factors.
[[nodiscard]] double toTwenty(double celsius);
// The same with the temperature coefficient of annealed copper, 0.00393 1/K (IEC 60028), for windings.
[[nodiscard]] double windingToTwenty(double celsius);

struct BladeFuse {
    double amperes;
    std::string_view colour;
};
// ISO 8820-3, in order of rating. The colour of 40 A is advisory.
[[nodiscard]] std::span<const BladeFuse> bladeFuses();
// DIN 72581-1 ceramic fuses, 6 x 25 mm.
[[nodiscard]] std::span<const BladeFuse> ceramicFuses();
// The largest fuse that a wire may stand behind, by area: common practice, no source.
[[nodiscard]] double largestFuse(double area);

} // namespace undercowl::trade
