#include "core/verdict/decide.h"
#include "core/verdict/words.h"
#include "tests/reference/csv.h"

#include <catch2/catch.hpp>

#include <random>

using namespace undercowl::units;
using namespace undercowl::verdict;
using undercowl::reference::Row;

namespace {

Quantity torque(double value) {
    return {value, unit(Dimension::Torque, "N.m")};
}

Verdict decided(double y, std::optional<double> low, std::optional<double> high, double u2,
                Rule rule = Rule::GuardBand) {
    Limits limits;
    if (low)
        limits.low = torque(*low);
    if (high)
        limits.high = torque(*high);
    const auto verdict = decide(torque(y), limits, torque(u2), rule);
    REQUIRE(verdict);
    return *verdict;
}

std::optional<double> cell(const Row& row, const char* column) {
    return row.has(column) ? std::optional(row.number(column)) : std::nullopt;
}

} // namespace

// Sources: ILAC-G8:09/2019 4.2.3 with w = U and ISO 14253-1 for the guard band, ILAC-G8 4.2.1 and JCGM
// 106:2012 8.2 for simple acceptance.
TEST_CASE("Verdicts near a limit are as the decision rules say") {
    int checked = 0;
    for (const Row& row : undercowl::reference::rows("decision_rules.csv")) {
        if (row["confidence"] != "high")
            continue;
        INFO(row.name());
        const bool simple = row["rule"] == "simple acceptance";
        const Verdict v =
            decided(row.number("measured"), cell(row, "lower_limit"), cell(row, "upper_limit"),
                    row.number("U_expanded_k2"), simple ? Rule::SimpleAcceptance : Rule::GuardBand);
        const std::string& expected = row["verdict"];
        if (expected == "undecided")
            CHECK(v.answer == Answer::TooClose);
        else if (expected == "conforms" || expected == "accept")
            CHECK(v.answer == Answer::Within);
        else
            CHECK(v.answer == Answer::Outside);
        CHECK(v.probability == Approx(row.number("conformance_probability")).margin(0.00006));
        CHECK(v.standard.value == Approx(row.number("u_standard")));
        if (row.has("accept_from"))
            CHECK(v.acceptFrom->value == Approx(row.number("accept_from")));
        if (row.has("accept_to"))
            CHECK(v.acceptTo->value == Approx(row.number("accept_to")));
        ++checked;
    }
    CHECK(checked == 43);
}

TEST_CASE("A verdict is symmetric in mirrored limits") {
    std::mt19937 random(7);
    std::uniform_real_distribution<double> place(-3, 3);
    std::uniform_real_distribution<double> width(0.01, 2);
    for (int i = 0; i < 2000; ++i) {
        const double y = place(random);
        const double low = place(random);
        const double high = low + width(random);
        const double u2 = width(random);
        const Rule rule = i % 2 == 0 ? Rule::GuardBand : Rule::SimpleAcceptance;
        const Verdict a = decided(y, low, high, u2, rule);
        const Verdict b = decided(-y, -high, -low, u2, rule);
        CHECK(a.answer == b.answer);
        CHECK(a.probability == Approx(b.probability).margin(1e-12));
        CHECK(decided(y, low, std::nullopt, u2, rule).answer ==
              decided(-y, std::nullopt, -low, u2, rule).answer);
    }
}

TEST_CASE("More uncertainty never turns doubt into certainty") {
    for (int i = 0; i <= 80; ++i) {
        const double y = 8 + 0.05 * i;
        Answer before = decided(y, 9, 11, 0.01).answer;
        for (int j = 1; j < 150; ++j) {
            const Answer now = decided(y, 9, 11, 0.02 * j).answer;
            if (before == Answer::TooClose)
                CHECK(now == Answer::TooClose);
            before = now;
        }
    }
}

TEST_CASE("The probability of conformity agrees with Monte Carlo") {
    std::mt19937 random(42);
    std::normal_distribution<double> noise(0, 1);
    constexpr int trials = 200000;
    for (const double y : {8.7, 9.1, 10.0, 10.9, 11.4}) {
        const double u = 0.35;
        int inside = 0;
        for (int i = 0; i < trials; ++i) {
            const double truth = y + u * noise(random);
            inside += truth >= 9 && truth <= 11 ? 1 : 0;
        }
        // Four standard errors of the counted share at its widest.
        CHECK(probabilityOfConformity(y, u, 9, 11) == Approx(inside / double(trials)).margin(4 * 0.5 / 447));
    }
}

TEST_CASE("Without limit or uncertainty there is no verdict, and zero is no uncertainty") {
    using Reason = NoVerdict::Reason;
    Limits limits;
    CHECK(decide(torque(9), limits, torque(0.4)).error().reason == Reason::NoLimit);
    limits.low = torque(8);
    CHECK(decide(torque(9), limits, std::nullopt).error().reason == Reason::NoUncertainty);
    CHECK(decide(torque(9), limits, torque(0)).error().reason == Reason::NoUncertainty);
    CHECK(decide(torque(9), limits, torque(-1)).error().reason == Reason::NoUncertainty);
    const Quantity energy{1, unit(Dimension::Energy, "J")};
    CHECK(decide(torque(9), limits, energy).error().message.find("what fits is N.m") != std::string::npos);
    limits.high = torque(7);
    CHECK(decide(torque(9), limits, torque(0.4)).error().reason == Reason::LimitsCrossed);
}

TEST_CASE("Units may differ between value, limit and uncertainty") {
    const Dimension gauge = Dimension::GaugePressure;
    Limits limits;
    limits.low = Quantity{2, unit(gauge, "bar gauge")};
    const auto verdict = decide({30, unit(gauge, "psi gauge")}, limits,
                                Quantity{10, unit(Dimension::PressureDifference, "kPa")});
    REQUIRE(verdict);
    CHECK(verdict->acceptFrom->value == Approx(210 / 6.894757293168361));
    CHECK(verdict->expanded.unit.symbol() == "psi");
    CHECK(verdict->answer == Answer::TooClose);
    Limits warm;
    warm.high = Quantity{40, unit(Dimension::Temperature, "degC")};
    const auto hot = decide({100, unit(Dimension::Temperature, "degF")}, warm,
                            Quantity{1, unit(Dimension::TemperatureDifference, "K")});
    REQUIRE(hot);
    CHECK(hot->expanded.value == Approx(1.8));
    CHECK(hot->acceptTo->value == Approx(102.2));
}

TEST_CASE("Too close to call says what would settle it") {
    const auto near = whatWouldSettle(decided(9.3, 9, 11, 0.4));
    REQUIRE(near.size() == 1);
    CHECK(near.front().find("below 0.3 N.m") != std::string::npos);
    CHECK(whatWouldSettle(decided(9, 9, 11, 0.4)).front().find("no instrument will settle it") !=
          std::string::npos);
    CHECK(whatWouldSettle(decided(10, 9.9, 10.1, 0.4)).front().find("closer together") != std::string::npos);
    CHECK(decided(10, 9.9, 10.1, 0.4).neverPasses);
    CHECK(whatWouldSettle(decided(9.3, 9, 11, 0.4), 0.19, 3).size() == 2);
    CHECK(whatWouldSettle(decided(10, 9, 11, 0.4)).empty());
}

TEST_CASE("The manual is trusted over shop record, standard and own working") {
    Limits own, standard, manual;
    own.source.trust = Trust::WorkedOutHere;
    standard.source.trust = Trust::Standard;
    manual.source = {Trust::Manual, "page 7-12"};
    const std::vector<Limits> all{own, standard, manual};
    CHECK(mostTrusted(all)->source.text() == "manual, page 7-12");
    CHECK(mostTrusted(std::span(all).first(2))->source.trust == Trust::Standard);
    CHECK(mostTrusted({}) == nullptr);
}
