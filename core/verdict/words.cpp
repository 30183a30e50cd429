#include "core/verdict/words.h"

#include "core/units/format.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace undercowl::verdict {

using units::format;

std::string_view word(Answer answer) {
    switch (answer) {
    case Answer::Within: return "within";
    case Answer::Outside: return "outside";
    case Answer::TooClose: break;
    }
    return "too close to call";
}

std::string_view word(Rule rule) {
    return rule == Rule::GuardBand ? "guard" : "simple";
}

std::string percentText(double probability) {
    if (probability > 0.9995)
        return "more than 99.9 %";
    if (probability < 0.0005)
        return "less than 0.1 %";
    return units::formatFixed(100 * probability, 1) + " %";
}

std::vector<std::string> whatWouldSettle(const Verdict& verdict, double repeats, int count) {
    std::vector<std::string> advice;
    if (verdict.answer != Answer::TooClose)
        return advice;
    double distance = std::numeric_limits<double>::infinity();
    for (const auto& limit : {verdict.low, verdict.high})
        if (limit)
            distance = std::min(distance, std::fabs(verdict.measured.value - limit->value));
    const units::Unit unit = verdict.expanded.unit;
    if (verdict.neverPasses)
        advice.push_back(
            "a better instrument: the limits are closer together than twice the uncertainty, so that no "
            "value could be accepted with this one");
    const double scale = std::fabs(verdict.measured.value) + verdict.expanded.value;
    if (distance <= 1e-9 * scale) {
        advice.emplace_back(
            "the value lies on the limit: no instrument will settle it; adjust or renew, then measure "
            "again");
        return advice;
    }
    advice.push_back("a better instrument: an expanded uncertainty below " + format({distance, unit}, 2) +
                     " would settle it");
    // More readings shrink only their own spread.
    const double rest = verdict.standard.value * verdict.standard.value - repeats * repeats;
    const double room = distance * distance / 4 - rest;
    if (repeats > 0 && room > 0) {
        const double needed = std::ceil(count * repeats * repeats / room);
        if (needed <= 30)
            advice.push_back("more readings: about " + std::to_string(static_cast<int>(needed)) +
                             " in all, if their mean stays");
    }
    return advice;
}

std::vector<std::string> working(const Verdict& verdict) {
    std::vector<std::string> lines;
    lines.push_back("measured " + format(verdict.measured) + ", expanded uncertainty " +
                    format(verdict.expanded) + " (k = 2), standard " + format(verdict.standard));
    const std::string guard = verdict.rule == Rule::GuardBand
                                  ? " moved inward by U (guard band, ISO 14253-1): accept "
                                  : " as they stand (simple acceptance): accept ";
    if (verdict.acceptFrom)
        lines.push_back("lower limit " + format(*verdict.low) + guard + "from " +
                        format(*verdict.acceptFrom));
    if (verdict.acceptTo)
        lines.push_back("upper limit " + format(*verdict.high) + guard + "up to " +
                        format(*verdict.acceptTo));
    lines.push_back("probability that the true value conforms (JCGM 106): " +
                    percentText(verdict.probability));
    lines.push_back("verdict: " + std::string(word(verdict.answer)));
    return lines;
}

} // namespace undercowl::verdict
