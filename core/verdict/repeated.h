// Several readings of the same thing.
#pragma once

#include "core/units/quantity.h"
#include "core/verdict/budget.h"

#include <span>
#include <tl/expected.hpp>

namespace undercowl::verdict {

struct Repeated {
    double mean{};
    double spread{}; // experimental standard deviation of one reading (JCGM 100, 4.2.2)
    double ofMean{}; // spread / root n, widened for few readings so that twice it still covers 95 %
    double
        widened{}; // by this factor: t(95.45 %, n - 1) / 2 from JCGM 100 table G.2; 1 from eleven readings on
    int count{};

    [[nodiscard]] Contribution contribution() const;
};

// At least two finite readings, all in the same unit; the error says so.
[[nodiscard]] tl::expected<Repeated, std::string> repeatedReadings(std::span<const double> readings);

} // namespace undercowl::verdict
