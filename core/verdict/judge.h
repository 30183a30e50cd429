// From readings, instrument and limits to everything that a screen or a record shows.
#pragma once

#include "core/verdict/decide.h"
#include "core/verdict/instrument.h"
#include "core/verdict/repeated.h"

#include <optional>
#include <span>
#include <string>
#include <tl/expected.hpp>
#include <vector>

namespace undercowl::verdict {

struct Judgement {
    units::Quantity value; // the reading, or the mean of several
    std::optional<Repeated> repeated;
    std::optional<Budget> budget;
    std::optional<units::Quantity> expanded;
    std::optional<Verdict> verdict;
    bool assumed{};        // no instrument was named: 'expanded' is that of assumedBudget()
    std::string noVerdict; // why there is none; empty if there is one
    std::vector<std::string> settle;
    std::vector<std::string> cautions; // calibration overdue, limits that are only worked out here
    std::vector<std::string> working;  // line by line
};

// Without an instrument a value that lies beyond a limit as it was read is judged by assumedBudget() and the
// guard band, so that it is outside where nobody can doubt it and too close to call otherwise. A value that
// was read inside its limits has no verdict then: what is not known speaks for nothing.
//
// READINGS: one or more of the same dimension, the first one's unit is shown. Never fails for want of
// instrument or limits: the value is kept and noVerdict says why. The error is for readings that cannot be
// joined or that the instrument cannot have given (outside its range), naming the remedy.
[[nodiscard]] tl::expected<Judgement, std::string> judge(std::span<const units::Quantity> readings,
                                                         const Instrument* instrument, const Limits* limits,
                                                         units::Date today, Rule rule = Rule::GuardBand);

// The same where the expanded uncertainty (k = 2) of one reading is known rather than the instrument: a plain
// quantity of the interval dimension, above zero. The spread of several readings adds to it.
[[nodiscard]] tl::expected<Judgement, std::string> judge(std::span<const units::Quantity> readings,
                                                         const units::Quantity& expanded,
                                                         const Limits* limits, Rule rule = Rule::GuardBand);

} // namespace undercowl::verdict
