// Is a measured value within its limits, given its uncertainty?
//
// Guard band (default): the limits are moved inward by the expanded uncertainty U (k = 2) for acceptance and
// outward for rejection; between lies "too close to call" (ISO 14253-1; ILAC-G8:09/2019, 4.2.3 with w = U).
// Simple acceptance: the bare limits decide (JCGM 106:2012, 8.2). The probability of conformity is that of a
// normal distribution about the measured value (JCGM 106:2012, 7): Phi((high - y)/u) - Phi((low - y)/u).
#pragma once

#include "core/units/quantity.h"
#include "core/verdict/limits.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <tl/expected.hpp>

namespace undercowl::verdict {

enum class Rule : std::uint8_t { GuardBand, SimpleAcceptance };
enum class Answer : std::uint8_t { Within, Outside, TooClose };

struct Verdict {
    Answer answer{};
    double probability{}; // of conformity, 0 to 1
    Rule rule{};
    units::Quantity measured;
    units::Quantity standard;                 // uncertainty, in the interval unit that fits `measured`
    units::Quantity expanded;                 // twice that
    std::optional<units::Quantity> low, high; // the limits, in the unit of `measured`
    std::optional<units::Quantity> acceptFrom, acceptTo; // in the unit of `measured`
    bool neverPasses{}; // the limits are closer together than twice U: no value at all could be accepted
};

// Why there is no verdict. The value is worth keeping all the same.
struct NoVerdict {
    enum class Reason : std::uint8_t { NoLimit, NoUncertainty, WrongUnit, LimitsCrossed };
    Reason reason{};
    std::string message;
};

// EXPANDED is the expanded uncertainty, k = 2, of the interval dimension of the measured value (kPa for a
// gauge pressure, K for a temperature). Without it, or with one that is not above zero, there is no verdict:
// an uncertainty of zero is never assumed. Boundaries of the zones belong to acceptance and to "too close",
// as ILAC-G8 has them.
[[nodiscard]] tl::expected<Verdict, NoVerdict> decide(const units::Quantity& measured, const Limits& limits,
                                                      const std::optional<units::Quantity>& expanded,
                                                      Rule rule = Rule::GuardBand);

// The unit for an uncertainty of a value in UNIT: the plain pressure beside a gauge one, K beside degC.
[[nodiscard]] units::Unit intervalUnit(units::Unit unit);

// Phi, the normal distribution function.
[[nodiscard]] double normalDistribution(double x);

// The probability that the true value lies between the limits.
[[nodiscard]] double probabilityOfConformity(double measured, double standard, std::optional<double> low,
                                             std::optional<double> high);

} // namespace undercowl::verdict
