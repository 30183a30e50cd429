// Verdicts in words.
#pragma once

#include "core/verdict/decide.h"

#include <string>
#include <string_view>
#include <vector>

namespace undercowl::verdict {

// "within", "outside", "too close to call": as stored in entries and printed by the command line.
[[nodiscard]] std::string_view word(Answer answer);
[[nodiscard]] std::string_view word(Rule rule); // "guard", "simple"

// "93.3 %"; never "100.0 %" or "0.0 %", since a normal distribution is never certain: "more than 99.9 %".
[[nodiscard]] std::string percentText(double probability);

// What would turn "too close to call" into an answer: how small the uncertainty must become, and whether more
// readings can do it (REPEATS is the standard uncertainty that shrinks with their number, 0 if none is known;
// COUNT how many were taken). Empty for the other answers.
[[nodiscard]] std::vector<std::string> whatWouldSettle(const Verdict& verdict, double repeats = 0,
                                                       int count = 1);

// The arithmetic line by line: limits, acceptance zone, answer, probability.
[[nodiscard]] std::vector<std::string> working(const Verdict& verdict);

} // namespace undercowl::verdict
