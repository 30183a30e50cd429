#include "core/verdict/repeated.h"

#include <array>
#include <cmath>

namespace undercowl::verdict {
namespace {

// Student's t for 95.45 % and 1 to 10 degrees of freedom: JCGM 100:2008 table G.2.
constexpr std::array coverage{13.97, 4.53, 3.31, 2.87, 2.65, 2.52, 2.43, 2.37, 2.32, 2.28};

} // namespace

Contribution Repeated::contribution() const {
    std::string what = "spread of " + std::to_string(count) + " readings over root " + std::to_string(count);
    if (widened > 1)
        what += ", widened for few readings";
    return {std::move(what), ofMean, Distribution::Standard};
}

tl::expected<Repeated, std::string> repeatedReadings(std::span<const double> readings) {
    if (readings.size() < 2)
        return tl::unexpected(std::string("a spread needs two readings or more; given: ") +
                              std::to_string(readings.size()));
    Repeated result;
    result.count = static_cast<int>(readings.size());
    for (const double reading : readings) {
        if (!std::isfinite(reading))
            return tl::unexpected(std::string("every reading must be a number"));
        result.mean += reading;
    }
    result.mean /= result.count;
    double squares = 0;
    for (const double reading : readings)
        squares += (reading - result.mean) * (reading - result.mean);
    result.spread = std::sqrt(squares / (result.count - 1));
    const auto freedom = static_cast<std::size_t>(result.count - 1);
    result.widened = freedom <= coverage.size() ? coverage.at(freedom - 1) / 2 : 1;
    result.ofMean = result.widened * result.spread / std::sqrt(result.count);
    return result;
}

} // namespace undercowl::verdict
