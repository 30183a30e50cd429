// Values that were read with no instrument named.
#include "core/verdict/judge.h"
#include "core/verdict/target.h"

#include <catch2/catch.hpp>

#include <chrono>
#include <cmath>

using namespace undercowl::units;
using namespace undercowl::verdict;

namespace {

Judgement judged(const Quantity& reading, const Limits& limits, Rule rule = Rule::GuardBand) {
    const auto judgement = judge({&reading, 1}, nullptr, &limits, std::chrono::year{2026} / 11 / 26, rule);
    REQUIRE(judgement);
    return *judgement;
}

Quantity of(Dimension dimension, const char* symbol, double value) {
    return {value, unit(dimension, symbol)};
}

} // namespace

TEST_CASE("What nobody can doubt is outside though the instrument is not known, nothing is within by it") {
    const auto mm = [](double value) { return of(Dimension::Length, "mm", value); };
    Limits tread;
    tread.low = mm(1.6);
    const Judgement worn = judged(mm(1.2), tread);
    REQUIRE(worn.verdict);
    CHECK(worn.verdict->answer == Answer::Outside);
    CHECK(worn.assumed);
    CHECK_FALSE(worn.cautions.empty());
    REQUIRE(worn.expanded);
    CHECK(worn.expanded->in(unit(Dimension::Length, "mm")) == Approx(2 * std::sqrt(2 * 0.05 * 0.05 / 3)));
    const Judgement close = judged(mm(1.58), tread);
    REQUIRE(close.verdict);
    CHECK(close.verdict->answer == Answer::TooClose);
    const Judgement deep = judged(mm(6), tread); // by an instrument that nobody knows
    CHECK_FALSE(deep.verdict);
    CHECK_FALSE(deep.assumed);
    CHECK_FALSE(deep.noVerdict.empty());
}

TEST_CASE("Where no ordinary instrument reads it, a tenth of it is taken") {
    Limits idle;
    idle.high = of(Dimension::RotationalSpeed, "rpm", 1800);
    CHECK(judged(of(Dimension::RotationalSpeed, "rpm", 2600), idle).verdict->answer == Answer::Outside);
    CHECK(judged(of(Dimension::RotationalSpeed, "rpm", 1850), idle).verdict->answer == Answer::TooClose);
    CHECK_FALSE(judged(of(Dimension::RotationalSpeed, "rpm", 1400), idle).verdict);
}

TEST_CASE("A torque of a step is missed by far or not at all, as far as an unknown wrench can tell") {
    const auto limits = limitsAround(of(Dimension::Torque, "N.m", 27), "27 N.m in the step").limits;
    CHECK(judged(of(Dimension::Torque, "N.m", 40), limits, targetRule).verdict->answer == Answer::Outside);
    CHECK(judged(of(Dimension::Torque, "N.m", 28.5), limits, targetRule).verdict->answer == Answer::TooClose);
    CHECK_FALSE(judged(of(Dimension::Torque, "N.m", 27), limits, targetRule).verdict);
}

TEST_CASE("Limits that are crossed judge nothing") {
    Limits crossed;
    crossed.low = of(Dimension::Length, "mm", 30);
    crossed.high = of(Dimension::Length, "mm", 24);
    CHECK_FALSE(judged(of(Dimension::Length, "mm", 27), crossed).verdict);
}
