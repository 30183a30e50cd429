#include "core/verdict/decide.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace undercowl::verdict {
namespace {

using units::Quantity;
using units::Unit;

tl::unexpected<NoVerdict> none(NoVerdict::Reason reason, std::string message) {
    return tl::unexpected(NoVerdict{reason, std::move(message)});
}

// An interval of one base unit is this long in UNIT: 1.8 for degF.
double intervalIn(Unit unit, double base) {
    const Unit baseUnit = units::baseUnit(unit.dimension());
    return Quantity{base, baseUnit}.in(unit)-Quantity{0, baseUnit}.in(unit);
}

} // namespace

Unit intervalUnit(Unit unit) {
    const auto dimension = units::intervalOf(unit.dimension());
    if (dimension == unit.dimension())
        return unit;
    const std::string symbol = unit.symbol().substr(0, unit.symbol().find(' '));
    return units::findUnit(symbol, dimension).value_or(units::baseUnit(dimension));
}

double normalDistribution(double x) {
    return std::erfc(-x / std::numbers::sqrt2) / 2;
}

double probabilityOfConformity(double measured, double standard, std::optional<double> low,
                               std::optional<double> high) {
    const double below = high ? normalDistribution((*high - measured) / standard) : 1;
    const double under = low ? normalDistribution((*low - measured) / standard) : 0;
    return std::clamp(below - under, 0.0, 1.0);
}

tl::expected<Verdict, NoVerdict> decide(const Quantity& measured, const Limits& limits,
                                        const std::optional<Quantity>& expanded, Rule rule) {
    using Reason = NoVerdict::Reason;
    if (!limits.low && !limits.high)
        return none(Reason::NoLimit, "no limit is known: the value is kept without a verdict");
    const auto dimension = measured.unit.dimension();
    for (const auto& limit : {limits.low, limits.high})
        if (limit && limit->unit.dimension() != dimension)
            return none(Reason::WrongUnit, "the limit is in " + limit->unit.symbol() + ", the value in " +
                                               measured.unit.symbol() + ": what fits is " +
                                               units::symbolsOf(dimension));
    if (!expanded)
        return none(Reason::NoUncertainty,
                    "no instrument or uncertainty is known: the value is kept without a verdict");
    if (expanded->unit.dimension() != units::intervalOf(dimension))
        return none(Reason::WrongUnit, "the uncertainty is in " + expanded->unit.symbol() +
                                           ": what fits is " +
                                           units::symbolsOf(units::intervalOf(dimension)));
    if (!(expanded->value > 0) || !std::isfinite(expanded->value) || !std::isfinite(measured.value))
        return none(Reason::NoUncertainty,
                    "the uncertainty must be above zero: no instrument is without error");

    const double y = measured.base();
    const double u2 = expanded->base();
    const auto base = [](const std::optional<Quantity>& q) {
        return q ? std::optional<double>(q->base()) : std::nullopt;
    };
    auto low = base(limits.low);
    auto high = base(limits.high);
    // A reciprocal scale (miles per gallon) turns round: the lower figure there is the higher consumption.
    const bool reciprocal = measured.unit.entry().law != units::Law::Linear;
    if (reciprocal && (low || high) && measured.unit.entry().law == units::Law::Reciprocal)
        std::swap(low, high);
    if (low && high && *low > *high)
        return none(Reason::LimitsCrossed, "the lower limit is above the upper one");

    const double guard = rule == Rule::GuardBand ? u2 : 0;
    // What is equal but for the last bits of the arithmetic is equal.
    const double hair =
        1e-9 * std::max({std::fabs(y), u2, std::fabs(low.value_or(0)), std::fabs(high.value_or(0))});
    const auto notBelow = [&](double value, double bound) { return value >= bound - hair; };
    const bool accepted = (!low || notBelow(y, *low + guard)) && (!high || notBelow(*high - guard, y));
    const bool rejected = (low && !notBelow(y, *low - guard)) || (high && !notBelow(*high + guard, y));

    const Unit unit = measured.unit;
    const auto shown = [&](double value) {
        return Quantity{Quantity{value, units::baseUnit(dimension)}.in(unit), unit};
    };
    Verdict verdict;
    verdict.answer = accepted ? Answer::Within : rejected ? Answer::Outside : Answer::TooClose;
    verdict.probability = probabilityOfConformity(y, u2 / 2, low, high);
    verdict.rule = rule;
    verdict.measured = measured;
    const double width = reciprocal ? std::fabs(shown(y + u2).value - measured.value) : intervalIn(unit, u2);
    verdict.expanded = {width, intervalUnit(unit)};
    verdict.standard = {width / 2, intervalUnit(unit)};
    if (low) {
        verdict.low = shown(*low);
        verdict.acceptFrom = shown(*low + guard);
    }
    if (high) {
        verdict.high = shown(*high);
        verdict.acceptTo = shown(*high - guard);
    }
    verdict.neverPasses = low && high && *low + guard > *high - guard + hair;
    if (verdict.neverPasses)
        verdict.answer = rejected ? Answer::Outside : Answer::TooClose;
    if (reciprocal && unit.entry().law == units::Law::Reciprocal) {
        std::swap(verdict.low, verdict.high);
        std::swap(verdict.acceptFrom, verdict.acceptTo);
    }
    return verdict;
}

} // namespace undercowl::verdict
