// The uncertainty of a measurement, line by line, by JCGM 100:2008 (GUM).
#pragma once

#include "core/units/quantity.h"

#include <cstdint>
#include <string>
#include <vector>

namespace undercowl::verdict {

// What is known about a contribution. The divisor turns its half-width into a standard uncertainty:
// rectangular the root of 3 (JCGM 100, 4.3.7), triangular the root of 6 (4.3.9), normal the coverage factor 2
// of an expanded uncertainty, standard 1.
enum class Distribution : std::uint8_t { Rectangular, Triangular, Normal, Standard };

// One line. Width and result are in the unit of the budget.
struct Contribution {
    std::string what;   // "limit of error of the wrench, 4 % of 20 N.m"
    double halfWidth{}; // not negative
    Distribution distribution{};

    [[nodiscard]] double standard() const;
};

[[nodiscard]] double divisor(Distribution distribution);
[[nodiscard]] std::string_view englishName(Distribution distribution);

// Contributions are taken as independent: their standard uncertainties add in squares (JCGM 100, 5.1.2).
struct Budget {
    units::Unit unit; // of the interval: K for temperatures, kPa for gauge pressures
    std::vector<Contribution> lines;

    [[nodiscard]] double combined() const;
    [[nodiscard]] units::Quantity standard() const { return {combined(), unit}; }
    [[nodiscard]] units::Quantity expanded(double k = 2) const { return {k * combined(), unit}; }
    // "limit of error ...: 0.8 N.m, rectangular, 0.8/1.732 = 0.462 N.m", the sum, the expanded uncertainty.
    [[nodiscard]] std::vector<std::string> working() const;
};

} // namespace undercowl::verdict
