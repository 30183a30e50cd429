#include "core/trade/air.h"
#include "core/trade/tyre_pressure.h"
#include "core/trade/tyres.h"
#include "tests/trade/running.h"

using namespace undercowl::trade;
using undercowl::reference::highRows;
using undercowl::reference::Row;

// Sources: ideal gas law with U.S. Standard Atmosphere 1976; a published gas-law note on tyre pressure.
TEST_CASE("Tyre pressure follows temperature and altitude") {
    CHECK(highRows("gauge_pressure.csv", "formula").size() == 2);
    for (const char* record : {"published_example", "worked_example"})
        for (const Row& row : highRows("gauge_pressure.csv", record)) {
            INFO(row.name());
            const Result r = ran("tyre-pressure-shift", {{"pressure", row["p1_gauge_kpa"]},
                                                         {"temp_from", row["t1_c"]},
                                                         {"temp_to", row["t2_c"]},
                                                         {"altitude_from", row["alt1_m"] + " m"},
                                                         {"altitude_to", row["alt2_m"] + " m"}});
            CHECK(number(r, "pressure") == Approx(row.number("p2_gauge_kpa")).margin(0.0002));
            const undercowl::units::Quantity p2 =
                std::get<undercowl::units::Quantity>(r.find("pressure")->value);
            using undercowl::units::Dimension;
            CHECK(p2.in(undercowl::units::unit(Dimension::GaugePressure, "psi gauge")) ==
                  Approx(row.number("p2_gauge_psi")).margin(0.0001));
            CHECK(p2.in(undercowl::units::unit(Dimension::GaugePressure, "bar gauge")) ==
                  Approx(row.number("p2_gauge_bar")).margin(0.00001));
            CHECK(standardPascals(row.number("alt1_m")) / 1000 ==
                  Approx(row.number("amb1_kpa")).margin(0.00006));
            CHECK(standardPascals(row.number("alt2_m")) / 1000 ==
                  Approx(row.number("amb2_kpa")).margin(0.00006));
            CHECK(p2.base() + row.number("amb2_kpa") == Approx(row.number("p2_abs_kpa")).margin(0.0002));
        }
    for (const Row& row : highRows("gauge_pressure.csv", "rule_of_thumb_check")) {
        INFO(row.name());
        const double ambient = row.number("amb1_kpa");
        const double p1 = row.number("p1_gauge_kpa");
        const double up =
            shiftedGauge(p1, ambient, row.number("t1_c"), row.number("t1_c") + 10 / 1.8, ambient);
        CHECK((up - p1) / 6.894757293168361 == Approx(row.number("value")).margin(0.0001));
    }
}

TEST_CASE("A leak is what remains after the temperature is taken out") {
    for (const Row& row : highRows("gauge_pressure.csv", "leak_example")) {
        INFO(row.name());
        const Result r = ran("leak-down", {{"pressure_1", row["p1_gauge_kpa"]},
                                           {"temp_1", row["t1_c"]},
                                           {"pressure_2", row["p2_gauge_kpa"]},
                                           {"temp_2", row["t2_c"]},
                                           {"hours", row["hours"]}});
        CHECK(number(r, "loss") == Approx(row.number("value")).margin(0.00006));
        CHECK(number(r, "loss_per_day") ==
              Approx(row.number("value") / row.number("hours") * 24).margin(0.02));
    }
    const Typed even{{"pressure_1", "200"}, {"temp_1", "20"}, {"pressure_2", "190"},
                     {"temp_2", "20"},      {"hours", "24"},  {"limit", "150"}};
    CHECK(number(ran("leak-down", even), "days_to_limit") == Approx(4));
}

// Sources: UNECE R75, R30 and ISO 5751-1 as printed in trade tables.
TEST_CASE("Load index and speed symbol tables") {
    for (const Row& row : highRows("tyre_load_speed.csv", "load_index"))
        CHECK(loadOfIndex(std::stoi(row["code"])) == row.number("value"));
    for (const Row& row : highRows("tyre_load_speed.csv", "speed_symbol"))
        CHECK(speedOfSymbol(row["code"].front()) == row.number("value"));
    CHECK_FALSE(loadOfIndex(29));
    CHECK_FALSE(loadOfIndex(81));
    CHECK_FALSE(speedOfSymbol('Z'));
}

TEST_CASE("Markings are read as they are moulded") {
    const Result inch = ran("tyre-marking", {{"marking", "3.50-10 59J"}});
    CHECK(number(inch, "width") == Approx(88.9));
    CHECK(number(inch, "rim") == 10);
    CHECK(number(inch, "load") == 243);
    CHECK(number(inch, "speed") == 100);
    const Result radial = ran("tyre-marking", {{"marking", "120/70 ZR 12 (58W)"}});
    CHECK(number(radial, "diameter") == Approx(12 * 25.4 + 168));
    CHECK(number(radial, "speed") == 270);
    CHECK(ran("tyre-marking", {{"marking", "100/90-10"}}).find("load") == nullptr);
    CHECK(number(ran("tyre-marking", {{"marking", "2.75-17 47P M/C TT"}}), "load") == 175);
}

// Source: 49 CFR 574.5, week 01 is the first full Sunday-to-Saturday week.
TEST_CASE("Date codes") {
    for (const Row& row : highRows("tyre_load_speed.csv", "date_code")) {
        INFO(row.name());
        const Result r = ran("tyre-date", {{"code", row["code"]}});
        if (row["code"].size() == 4) {
            CHECK(row["value"] == "week " + shown(r, "week") + " of " + shown(r, "year"));
            CHECK(row["unit"] == shown(r, "made_from") + ".." + shown(r, "made_to"));
            continue;
        }
        CHECK(row["value"].find("week " + shown(r, "week") + " of a year ending " + row["code"].substr(2)) ==
              0);
        const auto& years = std::get<std::vector<int>>(r.find("years")->value);
        CHECK(years.size() == 3);
        for (const int year : years)
            CHECK(year % 10 == row["code"][2] - '0');
        CHECK(years.back() == 1990 + row["code"][2] - '0');
    }
    for (const Row& row : highRows("tyre_load_speed.csv", "date_code_invalid")) {
        INFO(row.name());
        CHECK(refused("tyre-date", {{"code", row["code"]}}).field == "code");
    }
    CHECK(refused("tyre-date", {{"code", "4826"}, {"today", "2026-11-25"}}).reason.find("future") !=
          std::string::npos);
    CHECK(verdictOf(ran("tyre-date", {{"code", "2520"}, {"age_limit", "10"}})) == "within");
    CHECK(verdictOf(ran("tyre-date", {{"code", "2510"}, {"age_limit", "10"}})) == "outside");
    CHECK(verdictOf(ran("tyre-date", {{"code", "317"}, {"age_limit", "10"}})) == "outside");
}

// Sources: C&U Regulations 1986 (UK), StVZO (DE), KDV (AT), FMVSS 119 and COMAR (US); each row its own.
TEST_CASE("Legal tread depths of the places named") {
    const std::map<std::string, std::pair<std::string, std::string>> places{
        {"UK: motorcycle over 50 cc", {"UK", "motorcycle"}},
        {"UK: moped up to 50 cc", {"UK", "moped"}},
        {"DE: motorcycle", {"DE", "motorcycle"}},
        {"DE: moped small motorcycle and light motorcycle", {"DE", "moped"}},
        {"AT: motor vehicle over 25 km/h except moped", {"AT", "motorcycle"}},
        {"AT: moped", {"AT", "moped"}},
        {"US federal: motorcycle treadwear indicator", {"US", "motorcycle"}},
        {"US Maryland: motorcycle inspection", {"US-MD", "motorcycle"}}};
    for (const Row& row : highRows("tyre_load_speed.csv", "tread_minimum")) {
        INFO(row.name());
        const auto& [country, vehicle] = places.at(row["code"]);
        const Result r = ran("tread", {{"depth", "3"}, {"country", country}, {"class", vehicle}});
        if (row["value"] == "pattern visible") {
            CHECK(shown(r, "limit") == "pattern visible");
            CHECK(verdictOf(r) == "none");
            continue;
        }
        CHECK(number(r, "limit") == row.number("value"));
        CHECK(verdictOf(r) == "within");
        const double limit = row.number("value");
        CHECK(verdictOf(
                  ran("tread", {{"depth", exact(limit - 0.15)}, {"country", country}, {"class", vehicle}})) ==
              "outside");
        CHECK(verdictOf(ran("tread", {{"depth", exact(limit)}, {"country", country}, {"class", vehicle}})) ==
              "too close to call");
    }
    CHECK(highRows("tyre_load_speed.csv", "tread_note").front()["value"] == "local law prevails");
    CHECK(findCalculation("tread")->declaration.cautions.front().find("the law of the place applies") !=
          std::string::npos);
}
