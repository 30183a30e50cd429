// Electrical figures, dates, numbers and tables recomputed over random inputs by routes that share no formula
// with the code. Where a source is needed it stands beside the check.
#include "tests/trade/other_routes.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <set>

using namespace undercowl::trade;
using namespace std::chrono;

namespace {

// Probability that a normal value lies above LOW and below HIGH, by adding up slices of the bell.
double conformity(double measured, double standard, double low, double high) {
    double sum = 0;
    constexpr int slices = 4000;
    for (int i = 0; i < slices; ++i) {
        const double x = -8 + 16 * (i + 0.5) / slices;
        const double value = measured + x * standard;
        if (value >= low && value <= high)
            sum += std::exp(-x * x / 2) * 16 / slices;
    }
    return sum / std::sqrt(2 * std::acos(-1.0));
}

std::string padded(int value) {
    return value < 10 ? "0" + std::to_string(value) : std::to_string(value);
}

std::string iso(sys_days day) {
    const year_month_day date(day);
    return std::to_string(static_cast<int>(date.year())) + "-" +
           padded(static_cast<int>(static_cast<unsigned>(date.month()))) + "-" +
           padded(static_cast<int>(static_cast<unsigned>(date.day())));
}

} // namespace

TEST_CASE("Currents by energy and by the hour") {
    Random random;
    for (int i = 0; i < trials; ++i) {
        // What the wire turns into heat is what the load does not get. IEC 60228 class 5 at 20 degC, mohm/m,
        // and its 0.4 per cent a kelvin.
        const auto [area, milliohms] = std::array<std::pair<double, double>, 4>{
            {{0.75, 26.0},
             {1.0, 19.5},
             {1.5, 13.3},
             {2.5, 7.98}}}[static_cast<std::size_t>(random.whole(0, 3))];
        const double watts = random.between(5, 60);
        const double metres = random.between(0.5, 8);
        const double temp = random.between(0, 90);
        const Result wire = ran("wire-and-fuse", {{"power", exact(watts)},
                                                  {"voltage", "12"},
                                                  {"length", exact(metres)},
                                                  {"area", exact(area)},
                                                  {"conductors", "2"},
                                                  {"temp", exact(temp)}});
        const double current = number(wire, "current");
        CHECK(current * 12 == Approx(watts));
        const double ohms = 2 * metres * milliohms / 1000 * (0.92 + 0.004 * temp);
        CHECK(number(wire, "drop") * current == Approx(current * current * ohms));
        CHECK(number(wire, "drop_share") * 12 == Approx(number(wire, "drop")));
        CHECK(number(wire, "fuse") >= 1.25 * current);

        const double amperes = random.between(1, 120);
        const double drop = random.between(0.02, 1);
        const Result lost =
            ran("voltage-drop",
                {{"circuit", "starter-positive"}, {"drop", exact(drop)}, {"current", exact(amperes)}});
        CHECK(number(lost, "resistance") / 1000 * amperes * amperes == Approx(number(lost, "power_lost")));
        CHECK(number(lost, "power_lost") / amperes == Approx(drop));
        REQUIRE(lost.verdict);
        CHECK(lost.verdict->probability == Approx(conformity(drop, 0.005, -1e9, 0.5)).margin(0.003));

        const double drain = random.between(0.0005, 0.02);
        const double capacity = random.between(4, 20);
        const int days = random.whole(5, 60);
        double left = capacity;
        for (int hour = 0; hour < days * 24; ++hour)
            left = std::max(0.0, left - drain);
        CHECK(number(ran("standing-drain", {{"current", exact(drain)},
                                            {"capacity", exact(capacity)},
                                            {"days", std::to_string(days)}}),
                     "charge_lost") == Approx(100 * (1 - left / capacity)));

        // Copper's resistance would vanish at -234.45 degC (1/0.00393 K below 20 degC): IEC 60028.
        const double coil = random.between(0.2, 20000);
        const Result cold =
            ran("resistance-check", {{"measured", exact(coil)}, {"limit_low", "0.1"}, {"temp", exact(temp)}});
        CHECK(number(cold, "resistance_20") == Approx(coil * 254.4529 / (234.4529 + temp)).epsilon(1e-5));

        // Three of one bulb and five of another, and what is over.
        const double one = random.whole(2, 60);
        const double two = random.whole(2, 60);
        const Result lamps =
            ran("lamp-budget",
                {{"lamps", "3 x " + exact(one) + " W; " + exact(two) + " W x 5"}, {"generator", "500"}});
        CHECK(number(lamps, "load") + number(lamps, "spare") == Approx(500));
        CHECK(number(lamps, "load") == Approx(one + one + one + 5 * two));
    }
}

TEST_CASE("Charge by the tables' other direction, charging by its band") {
    // Makers' tables as in battery_lead_acid.csv: from the charge to the reading, then asked back.
    struct Table {
        const char* input;
        const char* type;
        std::array<double, 5> readings;
    };
    const std::array tables{Table{"voltage", "flooded", {11.89, 12.06, 12.24, 12.45, 12.65}},
                            Table{"specific_gravity", "flooded", {1.120, 1.155, 1.190, 1.225, 1.265}},
                            Table{"voltage", "agm", {11.8, 12.0, 12.3, 12.6, 12.7}}};
    Random random;
    for (int i = 0; i < trials; ++i)
        for (const Table& table : tables) {
            const double charge = random.between(0, 100);
            const auto below = static_cast<std::size_t>(charge / 25);
            const double part = charge / 25 - static_cast<double>(below);
            const double reading = table.readings[below] * (1 - part) +
                                   table.readings[std::min<std::size_t>(below + 1, 4)] * part;
            // At 80 F, where the hydrometer needs no correction.
            const Result asked = ran("battery-charge-state",
                                     {{table.input, exact(reading)}, {"type", table.type}, {"temp", "80 F"}});
            CHECK(number(asked, "charge") == Approx(charge).margin(1e-6));
        }
    for (int i = 0; i < trials; ++i) {
        const double revs = random.between(12.5, 16);
        const Result charging = ran("charging-check", {{"rest", "12.5"},
                                                       {"idle", "12.8"},
                                                       {"revs", exact(revs)},
                                                       {"system", "three-phase"},
                                                       {"limit_low", "13.8"},
                                                       {"limit_high", "14.8"},
                                                       {"uncertainty", "0.2"}});
        REQUIRE(charging.verdict);
        CHECK(charging.verdict->probability == Approx(conformity(revs, 0.1, 13.8, 14.8)).margin(0.003));
        const bool sure = revs >= 14.0 && revs <= 14.6;
        const bool no = revs < 13.6 || revs > 15.0;
        CHECK(verdictOf(charging) == (sure ? "within" : no ? "outside" : "too close to call"));
        // Limits of common use by law: the UK's 1 mm for motorcycles, Germany's 1.6 mm; tread in
        // tyre_load_speed.csv.
        const double depth = random.between(0.5, 3);
        const Result tread = ran("tread", {{"depth", exact(depth)}, {"country", i % 2 ? "UK" : "DE"}});
        REQUIRE(tread.verdict);
        CHECK(tread.verdict->probability ==
              Approx(conformity(depth, 0.05, i % 2 ? 1 : 1.6, 1e9)).margin(0.003));
    }
}

TEST_CASE("Dates by the calendar of the language") {
    Random random;
    for (int i = 0; i < trials; ++i) {
        // 49 CFR 574.5: week 01 is the first full week, Sunday to Saturday. Walked day by day.
        const int made = random.whole(2001, 2024);
        const int week = random.whole(1, 52);
        sys_days first = year(made) / January / 1;
        while (weekday(first) != Sunday)
            first += days(1);
        first += days(7 * (week - 1));
        const sys_days today = sys_days(2026y / November / 25);
        const Result tyre =
            ran("tyre-date", {{"code", padded(week) + padded(made % 100)}, {"today", iso(today)}});
        CHECK(shown(tyre, "made_from") == iso(first));
        CHECK(shown(tyre, "made_to") == iso(first + days(6)));
        CHECK(number(tyre, "age_years") ==
              Approx(static_cast<double>((today - first).count()) / 365.25).margin(0.021));

        const int months = random.whole(1, 36);
        const sys_days done = first + days(random.whole(0, 3000));
        const year_month_day from(done);
        const year_month target = year_month(from.year(), from.month()) + std::chrono::months(months);
        const day end = (target / last).day();
        const sys_days due = sys_days(target / std::min(from.day(), end));
        const Result service =
            ran("next-due",
                {{"last", iso(done)}, {"every", std::to_string(months) + " months"}, {"now", iso(today)}});
        CHECK(shown(service, "due") == iso(due));
        CHECK(shown(service, "left") == std::to_string((due - today).count()) +
                                            (std::abs((due - today).count()) == 1 ? " day" : " days"));
        const int km = random.whole(0, 60000);
        const Result distance = ran("next-due", {{"last", std::to_string(km) + " km"},
                                                 {"every", "4000 km"},
                                                 {"now", std::to_string(km + 3000) + " km"}});
        CHECK(number(distance, "left") == Approx(1000));
        CHECK(number(distance, "due") == Approx(km + 4000));
    }
}

TEST_CASE("Frame numbers by the low half of the letter's punched-card code") {
    // 49 CFR 565.15's letter values are the low halves of EBCDIC: A to I from 1, J to R from 1, S to Z
    // from 2.
    const std::string letters = "0123456789ABCDEFGHJKLMNPRSTUVWXYZ";
    const auto value = [](char c) {
        if (c >= '0' && c <= '9')
            return c - '0';
        return c <= 'I' ? c - 'A' + 1 : c <= 'R' ? c - 'J' + 1 : c - 'S' + 2;
    };
    Random random;
    for (int i = 0; i < trials; ++i) {
        std::string vin;
        for (int at = 0; at < 17; ++at)
            vin += letters[static_cast<std::size_t>(random.whole(0, static_cast<int>(letters.size()) - 1))];
        vin[9] = 'K';
        vin[8] = '0';
        // The weights fall from 8 to 2, then 10, the check digit's own nothing, then from 9 to 2.
        int sum = 0;
        for (int at = 0; at < 17; ++at)
            sum += value(vin[static_cast<std::size_t>(at)]) * (at < 7    ? 8 - at
                                                               : at == 7 ? 10
                                                               : at == 8 ? 0
                                                                         : 18 - at);
        const std::string digit = sum % 11 == 10 ? "X" : std::to_string(sum % 11);
        const Result checked = ran("vin", {{"number", vin}});
        CHECK(shown(checked, "check_digit") == digit);
        vin[8] = digit[0];
        CHECK(shown(ran("vin", {{"number", vin}}), "valid") == "yes");
        vin[8] = digit == "1" ? '2' : '1';
        CHECK(shown(ran("vin", {{"number", vin}}), "valid").rfind("no", 0) == 0);
    }
}

TEST_CASE("Every bolt once a stage, and no neighbours in a row across a circle") {
    for (int bolts = 2; bolts <= 24; ++bolts)
        for (const char* pattern : {"cross", "circle", "line"}) {
            const Result order = ran(
                "tightening-order",
                {{"bolts", std::to_string(bolts)}, {"pattern", pattern}, {"torque", "24"}, {"stages", "3"}});
            const auto& steps = std::get<std::vector<Step>>(order.find("steps")->value);
            REQUIRE(steps.size() == static_cast<std::size_t>(3 * bolts));
            std::set<std::pair<int, int>> seen;
            for (const Step& step : steps) {
                const int bolt = std::get<int>(step.cells[0].second);
                const int stage = std::get<int>(step.cells[1].second);
                CHECK((bolt >= 1 && bolt <= bolts && seen.emplace(bolt, stage).second));
                CHECK(std::get<undercowl::units::Quantity>(step.cells[2].second).value ==
                      Approx(8.0 * stage));
            }
            for (std::size_t i = 1; std::string(pattern) == "cross" && bolts > 4 && i < steps.size(); ++i) {
                const int gap = std::abs(std::get<int>(steps[i].cells[0].second) -
                                         std::get<int>(steps[i - 1].cells[0].second));
                INFO(bolts << " bolts, place " << i);
                CHECK((i % static_cast<std::size_t>(bolts) == 0 || std::min(gap, bolts - gap) > 1));
            }
        }
}

TEST_CASE("The lower fluid is the lower in both boiling points") {
    // 49 CFR 571.116: dry and wet reflux boiling points, degC.
    const std::map<std::string, std::pair<double, double>> glycols{
        {"DOT 3", {205, 140}}, {"DOT 4", {230, 155}}, {"DOT 5.1", {260, 180}}};
    for (const auto& [in, bears] : glycols)
        for (const auto& [fresh, other] : glycols) {
            const Result mixed = ran("brake-fluid", {{"in", in}, {"new", fresh}});
            CHECK(number(mixed, "dry_boiling") == std::min(bears.first, other.first));
            CHECK(number(mixed, "wet_boiling") == std::min(bears.second, other.second));
            const Result silicone = ran("brake-fluid", {{"in", in}, {"new", "DOT 5"}});
            CHECK(shown(silicone, "may_mix").rfind("no", 0) == 0);
        }
}
