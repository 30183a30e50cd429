// A torque that is demanded without a tolerance: "27 N.m".
//
// Whoever writes such a demand reckons with a wrench that may be off by what ISO 6789-1 permits one that
// reads up to just that torque: 6 % up to 10 N.m, 4 % above (wrenchDeviation(); that a bare torque means this
// is common practice, no source). The wrench's own error is thus the tolerance itself. Taken off once more as
// a guard band it would let no reading pass, so the bare limits decide: JCGM 106:2012, 8.2.
#pragma once

#include "core/units/quantity.h"
#include "core/verdict/decide.h"
#include "core/verdict/limits.h"

#include <string>

namespace undercowl::verdict {

inline constexpr Rule targetRule = Rule::SimpleAcceptance;

struct TargetLimits {
    std::string low, high; // digits, in the unit of the torque, as they are kept and shown
    Limits limits;         // of just these digits
    double percent{};      // either way
};

// TORQUE of the dimension torque and above zero; its unit stays. WHERE is the words of who demands it: "27
// N.m in the step". The source is the shop's own record.
[[nodiscard]] TargetLimits limitsAround(const units::Quantity& torque, const std::string& where);

} // namespace undercowl::verdict
