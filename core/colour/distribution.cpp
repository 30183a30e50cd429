#include "core/colour/distribution.h"

#include <cmath>
#include <cstddef>

namespace undercowl::colour {
namespace {

// In the order of the enumeration.
constexpr std::array<Distribution, allInsulations.size()> distributions{{
    {{20.0, 0.5, -0.5}, {8.0, 2.5, 3.0}},     // BK
    {{38.0, 17.0, 19.0}, {8.0, 6.0, 7.0}},    // BN
    {{44.0, 52.0, 31.0}, {9.0, 10.0, 10.0}},  // RD
    {{62.0, 40.0, 54.0}, {7.0, 9.0, 9.0}},    // OG
    {{74.0, -3.0, 64.0}, {9.0, 6.0, 9.0}},    // YE
    {{48.0, -35.0, 22.0}, {9.0, 8.0, 8.0}},   // GN
    {{37.0, 16.0, -47.0}, {9.0, 8.0, 10.0}},  // BU
    {{40.0, 40.0, -38.0}, {8.0, 11.0, 10.0}}, // VT
    {{54.0, 0.0, -1.5}, {9.0, 2.5, 4.0}},     // GY
    {{87.0, -0.5, 5.0}, {6.0, 2.5, 6.0}},     // WH
    {{68.0, 29.0, 2.0}, {9.0, 9.0, 7.0}},     // PK
    {{66.0, -32.0, -13.0}, {10.0, 8.0, 7.0}}, // TQ
    {{74.0, -9.0, -28.0}, {9.0, 6.0, 8.0}},   // LBU
    {{77.0, -40.0, 55.0}, {9.0, 8.0, 10.0}},  // LGN
}};

} // namespace

const Distribution& distribution(Insulation colour) {
    return distributions.at(static_cast<std::size_t>(colour));
}

double logDensity(Insulation colour, const Lab& measured) {
    const auto& [mean, spread] = distribution(colour);
    const double l = (measured.l - mean.l) / spread.l;
    const double a = (measured.a - mean.a) / spread.a;
    const double b = (measured.b - mean.b) / spread.b;
    constexpr double freedom = 6.0;
    return -0.5 * (freedom + 3.0) * std::log1p((l * l + a * a + b * b) / freedom) -
           std::log(spread.l * spread.a * spread.b);
}

} // namespace undercowl::colour
