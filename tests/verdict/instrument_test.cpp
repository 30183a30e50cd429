#include "core/units/date.h"
#include "core/verdict/judge.h"
#include "core/verdict/words.h"
#include "tests/reference/csv.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace undercowl::units;
using namespace undercowl::verdict;
using undercowl::reference::highRows;
using undercowl::reference::Row;

namespace {

const Date today = *parseDate("2026-11-25");

Quantity newtonMetres(double value) {
    return {value, unit(Dimension::Torque, "N.m")};
}

Instrument wrench50() {
    const auto made = torqueWrench("wrench 50", WrenchType::Setting, 'A', 5, 50, newtonMetres(0).unit, 0.5);
    REQUIRE(made);
    return *made;
}

} // namespace

// Source: ISO 6789:2003 as quoted in a maker manual; the boundary is the tool's maximum.
TEST_CASE("An adjustable wrench may be off by 6 % up to 10 N.m of tool maximum and by 4 % above") {
    for (const Row& row : highRows("torque_wrench.csv", "deviation_limit")) {
        INFO(row.name());
        const bool small = row["max_torque"] == "up to and including 10 N.m";
        CHECK(wrenchDeviation(WrenchType::Setting, 'A', small ? 10 : 10.1) == row.number("value"));
    }
    const auto boundary = highRows("torque_wrench.csv", "rule").front();
    REQUIRE(boundary["case"] == "boundary");
    CHECK(wrenchDeviation(WrenchType::Setting, 'A', boundary.number("value")) == 6);
    CHECK_FALSE(wrenchDeviation(WrenchType::Setting, 'H', 50));
    CHECK(torqueWrench("x", WrenchType::Indicating, 'G', 5, 50, newtonMetres(0).unit, 1)
              .error()
              .find("A to E") != std::string::npos);
}

// Sources: ISO 6789:2003; ISO 6789-1:2017 clause 5.1.3.
TEST_CASE("How a wrench is tested is told as the standard has it") {
    const std::string advice = testAdvice(InstrumentKind::TorqueWrench);
    for (const Row& row : highRows("torque_wrench.csv", "rule")) {
        INFO(row.name());
        if (row["case"] == "test points")
            CHECK(row["value"] == "20; 60; 100");
        if (row["case"] == "exercise before test")
            CHECK(row.number("value") == wrenchExercises);
    }
    CHECK(wrenchTestPercents == std::array{20, 60, 100});
    CHECK(advice ==
          "tested by ISO 6789: worked 5 times at its largest torque, then read at 20, 60 and 100 % of it");
    CHECK(testAdvice(InstrumentKind::Caliper).empty());
}

// Source: derived from the deviation formula A_s = (X_a - X_r)/X_r x 100.
TEST_CASE("Deviation examples fall within or outside the wrench's class") {
    for (const Row& row : highRows("torque_wrench.csv", "deviation_example")) {
        INFO(row.name());
        const double set = row.number("t_set_nm");
        const std::string& note = row["note"];
        const double read = std::stod(note.substr(note.find("reads ") + 6));
        const double deviation = (set - read) / read * 100;
        CHECK(deviation == Approx(row.number("value")).margin(0.00006));
        const double maximum = std::stod(row["max_torque"]);
        const bool within = std::fabs(deviation) <= *wrenchDeviation(WrenchType::Setting, 'A', maximum);
        CHECK(within == (note.find("within") != std::string::npos));
    }
}

TEST_CASE("A budget adds standard uncertainties in squares") {
    // JCGM 100:2008 4.3.7 and 5.1.2, worked by hand: 4 % of 20 N.m over root 3, half of 0.5 N.m over root 3.
    const auto budget = budgetFor(wrench50(), newtonMetres(20));
    REQUIRE(budget);
    REQUIRE(budget->lines.size() == 2);
    CHECK(budget->lines[0].standard() == Approx(0.8 / std::sqrt(3)));
    CHECK(budget->lines[1].standard() == Approx(0.25 / std::sqrt(3)));
    CHECK(budget->combined() == Approx(std::sqrt((0.64 + 0.0625) / 3)));
    CHECK(budget->expanded().value == Approx(2 * budget->combined()));
    CHECK(budget->working().size() == 4);
    CHECK(Contribution{"feel", 0.06, Distribution::Triangular}.standard() == Approx(0.06 / std::sqrt(6)));
    CHECK(Contribution{"certificate", 0.06, Distribution::Normal}.standard() == Approx(0.03));
}

TEST_CASE("Gauge class and multimeter digits are taken from the reading's own scale") {
    const auto gauge = pressureGauge("g", 1.6, 4, unit(Dimension::GaugePressure, "bar gauge"), 0.05);
    const auto budget = budgetFor(gauge, {29, unit(Dimension::GaugePressure, "psi gauge")});
    REQUIRE(budget);
    CHECK(budget->unit.symbol() == "kPa");
    CHECK(budget->lines[0].halfWidth == Approx(6.4)); // 1.6 % of 400 kPa
    CHECK(budget->lines[1].halfWidth == Approx(2.5));
    const Instrument* meter = ordinaryInstrument("multimeter", Dimension::Voltage);
    REQUIRE(meter != nullptr);
    const auto volts = budgetFor(*meter, {12.6, unit(Dimension::Voltage, "V")});
    REQUIRE(volts);
    CHECK(volts->lines[0].halfWidth == Approx(0.063));
    CHECK(volts->lines[1].halfWidth == Approx(0.02));
}

TEST_CASE("An instrument that cannot give the reading is refused") {
    CHECK(budgetFor(wrench50(), newtonMetres(60)).error().find("from 5 to 50 N.m") != std::string::npos);
    CHECK(budgetFor(wrench50(), {2, unit(Dimension::Voltage, "V")}).error().find("reads N.m") !=
          std::string::npos);
    Instrument blank;
    blank.name = "unknown";
    CHECK(whatIsMissing(blank).size() == 3);
    CHECK_FALSE(budgetFor(blank, {1, Unit()}));
    for (const Instrument& instrument : ordinaryInstruments()) {
        INFO(instrument.name);
        CHECK(whatIsMissing(instrument).empty());
        const double middle = (instrument.rangeLow + instrument.rangeHigh) / 2;
        CHECK(budgetFor(instrument, {middle, instrument.unit})->combined() > 0);
        CHECK(instrumentKind(code(instrument.kind)) == instrument.kind);
    }
}

TEST_CASE("Repeated readings give mean, spread and uncertainty") {
    const auto three = repeatedReadings(std::vector{9.8, 10.0, 10.2});
    REQUIRE(three);
    CHECK(three->mean == Approx(10));
    CHECK(three->spread == Approx(0.2));
    // JCGM 100:2008 table G.2: t for two degrees of freedom at 95.45 % is 4.53.
    CHECK(three->ofMean == Approx(0.2 / std::sqrt(3) * 4.53 / 2));
    const std::vector<double> many(40, 1.0);
    CHECK(repeatedReadings(many)->widened == 1);
    CHECK_FALSE(repeatedReadings(std::vector{1.0}));
    CHECK_FALSE(repeatedReadings(std::vector{1.0, std::nan("")}));
}

// JCGM 100:2008, 4.2 and 4.3.9: the spread of the readings is a contribution of its own.
TEST_CASE("The spread of readings adds to an uncertainty that was given") {
    const Quantity given = newtonMetres(0.2);
    Limits limits;
    limits.low = newtonMetres(9);
    limits.high = newtonMetres(11);
    const std::vector one{newtonMetres(10)};
    const auto single = judge(one, given, &limits);
    REQUIRE(single);
    REQUIRE(single->verdict);
    CHECK(single->verdict->answer == Answer::Within);
    CHECK(single->verdict->expanded.value == Approx(0.2));
    // Mean 10 as before, but one reading was below the limit and one above.
    const std::vector apart{newtonMetres(8.5), newtonMetres(11.5), newtonMetres(10)};
    const auto several = judge(apart, given, &limits);
    REQUIRE(several);
    REQUIRE(several->repeated);
    REQUIRE(several->verdict);
    CHECK(several->verdict->answer == Answer::TooClose);
    const double ofMean =
        1.5 / std::sqrt(3.0) * 4.53 / 2; // t of JCGM 100 table G.2 for two degrees of freedom
    CHECK(several->verdict->standard.value == Approx(std::hypot(0.1, ofMean)));
    CHECK_FALSE(judge(one, newtonMetres(0), &limits));
    const auto kept = judge(one, given, nullptr);
    REQUIRE(kept);
    CHECK_FALSE(kept->verdict);
}

TEST_CASE("A probability is never shown as certain") {
    CHECK(percentText(0.933193) == "93.3 %");
    CHECK(percentText(1) == "more than 99.9 %");
    CHECK(percentText(0.99951) == "more than 99.9 %");
    CHECK(percentText(0.9994) == "99.9 %");
    CHECK(percentText(0) == "less than 0.1 %");
    CHECK(percentText(0.0006) == "0.1 %");
}

TEST_CASE("A judgement keeps the value whatever is missing") {
    const std::vector readings{newtonMetres(20.1), newtonMetres(19.9), newtonMetres(20.0)};
    Limits limits;
    limits.low = newtonMetres(18);
    limits.high = newtonMetres(22);
    const Instrument wrench = wrench50();
    const auto bare = judge(readings, nullptr, &limits, today);
    REQUIRE(bare);
    CHECK_FALSE(bare->verdict);
    CHECK(bare->value.value == Approx(20));
    CHECK(bare->noVerdict.find("without a verdict") != std::string::npos);
    const auto full = judge(readings, &wrench, &limits, today);
    REQUIRE(full);
    REQUIRE(full->verdict);
    CHECK(full->verdict->answer == Answer::Within);
    CHECK(full->budget->lines.size() == 3);
    CHECK(full->cautions.size() == 2);
    CHECK_FALSE(judge(std::vector{newtonMetres(20), Quantity{1, unit(Dimension::Voltage, "V")}}, nullptr,
                      nullptr, today));
    CHECK_FALSE(judge({}, nullptr, nullptr, today));
}

TEST_CASE("An overdue calibration is said") {
    Instrument wrench = wrench50();
    CHECK(calibrationCaution(wrench, today)->find("no calibration") != std::string::npos);
    wrench.calibrated = *parseDate("2025-11-20");
    wrench.due = *parseDate("2026-11-20");
    CHECK(calibrationCaution(wrench, today)->find("2026-11-20") != std::string::npos);
    wrench.due = today;
    CHECK_FALSE(calibrationCaution(wrench, today));
}

TEST_CASE("Dates are read in one order only") {
    CHECK(formatDate(today) == "2026-11-25");
    CHECK_FALSE(parseDate("03/04/26"));
    CHECK_FALSE(parseDate("2026-02-29"));
    CHECK_FALSE(parseDate("0026-02-01"));
    CHECK(daysBetween(*parseDate("2024-02-28"), *parseDate("2024-03-01")) == 2);
}
