#include "core/verdict/judge.h"

#include "core/units/format.h"
#include "core/verdict/words.h"

namespace undercowl::verdict {
namespace {

void append(std::vector<std::string>& to, std::vector<std::string> lines) {
    to.insert(to.end(), std::make_move_iterator(lines.begin()), std::make_move_iterator(lines.end()));
}

// The mean in the unit of the first reading, and the spread in the base unit, where budgets are kept.
tl::expected<void, std::string> join(std::span<const units::Quantity> readings, Judgement& judgement) {
    const units::Unit unit = readings.front().unit;
    std::vector<double> base;
    for (const units::Quantity& reading : readings) {
        const auto same = units::convert(reading, unit);
        if (!same)
            return tl::unexpected("readings of different kinds: " + same.error().message);
        base.push_back(same->base());
    }
    judgement.value = readings.front();
    if (base.size() == 1)
        return {};
    auto repeated = repeatedReadings(base);
    if (!repeated)
        return tl::unexpected(repeated.error());
    const units::Unit baseUnit = units::baseUnit(unit.dimension());
    const units::Unit interval = units::baseUnit(units::intervalOf(unit.dimension()));
    judgement.value = {units::Quantity{repeated->mean, baseUnit}.in(unit), unit};
    judgement.working.push_back(
        "mean of " + std::to_string(repeated->count) + " readings: " + units::format(judgement.value) +
        ", spread (standard deviation) " + units::format({repeated->spread, interval}));
    judgement.repeated = *std::move(repeated);
    return {};
}

// What follows from the joined readings once their budget stands.
void weigh(Judgement& judgement, Budget budget) {
    if (judgement.repeated)
        budget.lines.push_back(judgement.repeated->contribution());
    append(judgement.working, budget.working());
    judgement.expanded = budget.expanded();
    judgement.budget = std::move(budget);
}

Judgement decided(Judgement judgement, const Limits* limits, Rule rule) {
    if (limits != nullptr && limits->source.trust == Trust::WorkedOutHere)
        judgement.cautions.emplace_back("the limit is worked out here: the machine's manual wins");
    auto verdict = decide(judgement.value, limits != nullptr ? *limits : Limits{}, judgement.expanded, rule);
    if (!verdict) {
        judgement.noVerdict = verdict.error().message;
        return judgement;
    }
    append(judgement.working, working(*verdict));
    judgement.settle = whatWouldSettle(*verdict, judgement.repeated ? judgement.repeated->ofMean : 0,
                                       judgement.repeated ? judgement.repeated->count : 1);
    judgement.verdict = *std::move(verdict);
    return judgement;
}

// Beyond a limit as the digits stand.
bool beyond(const units::Quantity& value, const Limits& limits) {
    const auto base = [&](const std::optional<units::Quantity>& limit) {
        return limit && limit->unit.dimension() == value.unit.dimension() ? std::optional(limit->base())
                                                                          : std::nullopt;
    };
    const auto low = base(limits.low);
    const auto high = base(limits.high);
    const bool crossed = low && high && *low > *high;
    return !crossed && ((low && value.base() < *low) || (high && value.base() > *high));
}

} // namespace

tl::expected<Judgement, std::string> judge(std::span<const units::Quantity> readings,
                                           const Instrument* instrument, const Limits* limits,
                                           units::Date today, Rule rule) {
    if (readings.empty())
        return tl::unexpected(std::string("no reading was given"));
    Judgement judgement;
    if (const auto joined = join(readings, judgement); !joined)
        return tl::unexpected(joined.error());
    if (instrument != nullptr) {
        auto budget = budgetFor(*instrument, judgement.value);
        if (!budget)
            return tl::unexpected(budget.error());
        weigh(judgement, *std::move(budget));
        if (auto caution = calibrationCaution(*instrument, today))
            judgement.cautions.push_back(*std::move(caution));
    } else if (limits != nullptr && beyond(judgement.value, *limits)) {
        judgement.assumed = true;
        judgement.cautions.emplace_back(
            "the instrument is not known: name it, or measure again with a known one");
        weigh(judgement, assumedBudget(judgement.value));
        rule = Rule::GuardBand;
    }
    return decided(std::move(judgement), limits, rule);
}

tl::expected<Judgement, std::string> judge(std::span<const units::Quantity> readings,
                                           const units::Quantity& expanded, const Limits* limits, Rule rule) {
    if (readings.empty())
        return tl::unexpected(std::string("no reading was given"));
    if (!(expanded.value > 0))
        return tl::unexpected(
            std::string("the uncertainty must be above zero: no instrument is without error"));
    Judgement judgement;
    if (const auto joined = join(readings, judgement); !joined)
        return tl::unexpected(joined.error());
    if (!judgement.repeated) {
        judgement.expanded = expanded;
        return decided(std::move(judgement), limits, rule);
    }
    // The spread is kept in the base unit of the interval.
    const units::Unit unit = units::baseUnit(units::intervalOf(judgement.value.unit.dimension()));
    weigh(judgement, {unit, {{"uncertainty as given, k = 2", expanded.in(unit), Distribution::Normal}}});
    return decided(std::move(judgement), limits, rule);
}

} // namespace undercowl::verdict
