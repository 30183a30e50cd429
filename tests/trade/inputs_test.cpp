#include "tests/trade/running.h"

using namespace undercowl::trade;

namespace {

void expectProblem(const std::string& name, const Typed& typed, const std::string& field,
                   const std::string& given) {
    const Problem problem = refused(name, typed);
    INFO(problem.message());
    CHECK(problem.field == field);
    CHECK(problem.given == given);
    CHECK_FALSE(problem.reason.empty());
    CHECK_FALSE(problem.possible.empty());
    CHECK(problem.message().find(field) == 0);
    CHECK(problem.message().find(given) != std::string::npos);
}

} // namespace

TEST_CASE("Errors name the input, what was given and what would be possible") {
    const Typed shift{{"pressure", "200"}, {"temp_from", "20"}, {"temp_to", "0"}};
    const auto with = [](Typed typed, const std::string& key, const std::string& value) {
        typed[key] = value;
        return typed;
    };
    expectProblem("tyre-pressure-shift", with(shift, "pressure", "2 bar absolute"), "pressure",
                  "2 bar absolute");
    expectProblem("tyre-pressure-shift", with(shift, "pressure", "-2 bar"), "pressure", "-2 bar");
    expectProblem("tyre-pressure-shift", with(shift, "pressure", "200 bar"), "pressure", "200 bar");
    expectProblem("tyre-pressure-shift", with(shift, "pressure", "2 N.m"), "pressure", "2 N.m");
    expectProblem("tyre-pressure-shift", with(shift, "temp_to", "-300"), "temp_to", "-300");
    expectProblem("tyre-pressure-shift", with(shift, "colour", "red"), "colour", "red");
    expectProblem("tyre-pressure-shift", {{"pressure", "200"}}, "temp_from", "");
    expectProblem("bolt-preload",
                  {{"thread", "M6"}, {"class", "8.8"}, {"torque", "40"}, {"nut_factor", "0.2"}}, "torque",
                  "40");
    expectProblem("bolt-torque", {{"thread", "M9"}, {"class", "8.8"}, {"nut_factor", "0.2"}}, "thread", "M9");
    expectProblem("bolt-torque", {{"thread", "M8"}, {"class", "9.9"}, {"nut_factor", "0.2"}}, "class", "9.9");
    expectProblem("bolt-torque", {{"thread", "M8"}, {"class", "8.8"}}, "nut_factor", "");
    expectProblem("bolt-torque",
                  {{"thread", "M8"}, {"class", "8.8"}, {"nut_factor", "0.2"}, {"thread_in", "aluminium"}},
                  "thread_in", "aluminium");
    expectProblem("tyre-date", {{"code", "0127"}}, "code", "0127");
    expectProblem("tyre-marking", {{"marking", "square"}}, "marking", "square");
    expectProblem("tread", {{"depth", "2"}, {"country", "XX"}}, "country", "XX");
    expectProblem("timing", {{"stroke", "50"}, {"rod", "20"}, {"degrees", "10"}}, "rod", "20");
    expectProblem("lamp-budget", {{"lamps", "H4, candle"}, {"generator", "90"}}, "lamps", "H4, candle");
    expectProblem("brake-fluid", {{"in", "DOT 7"}, {"new", "DOT 4"}}, "in", "DOT 7");
    expectProblem("premix", {{"fuel", "5"}, {"ratio", "0"}}, "ratio", "0");
    expectProblem("shim", {{"measured", "0.1"}, {"wanted", "4"}, {"shim", "2"}}, "shim", "2");
    expectProblem("convert", {{"value", "25 N.m"}, {"to", "J"}}, "to", "J");
    expectProblem("convert", {{"value", "2 bar gauge"}, {"to", "psi absolute"}}, "to", "psi absolute");
    expectProblem("convert", {{"value", "3 gal"}, {"to", "L"}}, "value", "3 gal");
    expectProblem("convert", {{"value", "1,500 mm"}, {"to", "in"}}, "value", "1,500 mm");
    expectProblem("next-due", {{"last", "03/04/2026"}, {"every", "6 months"}}, "last", "03/04/2026");
    expectProblem("tread", {{"depth", "2"}, {"country", "DE"}, {"uncertainty", "0"}}, "uncertainty", "0");
    expectProblem("wire-and-fuse", {{"length", "2"}, {"area", "1"}}, "current", "");
    // 200 A through 78 mohm would take 15.6 V of 12 V.
    expectProblem("wire-and-fuse", {{"current", "200"}, {"length", "2"}, {"area", "0.5"}}, "length", "2");
}

TEST_CASE("Values carry any fitting unit, without one the declared unit holds") {
    CHECK(number(ran("premix", {{"fuel", "1 US gal"}, {"ratio", "32:1"}}), "oil") ==
          Approx(118.294).epsilon(1e-5));
    CHECK(number(ran("premix", {{"fuel", "5"}, {"ratio", "2 %"}}), "oil") == Approx(100));
    CHECK(number(ran("torque-adapter",
                     {{"torque", "10 kgf.m"}, {"wrench_length", "12 in"}, {"adapter_length", "2 in"}}),
                 "setting") == Approx(98.0665 * 12 / 14));
    CHECK(number(ran("tyre-pressure-shift",
                     {{"pressure", "29 psi"}, {"temp_from", "68 F"}, {"temp_to", "32 F"}}),
                 "pressure") == Approx(179.3938).epsilon(1e-5));
}

TEST_CASE("Conversions keep the number and the wanted unit") {
    const Result result = ran("convert", {{"value", "34 psi"}, {"to", "kPa"}});
    CHECK(number(result, "value") == Approx(34 * 6.894757293168361));
    CHECK(shown(result, "value") == "234 kPa");
    CHECK(number(ran("convert", {{"value", "60 mpg(imp)"}, {"to", "L/100km"}}), "value") ==
          Approx(282.480936331822 / 60));
    CHECK(number(ran("convert", {{"value", "70 degF"}, {"to", "degC"}}), "value") == Approx(21.1111111111));
    CHECK(number(ran("convert", {{"value", "18 AWG"}, {"to", "mm2"}}), "value") ==
          Approx(0.8230).margin(0.0001));
    CHECK(shown(ran("convert", {{"value", "2.4 bar gauge"}, {"to", "psi gauge"}}), "value") ==
          "35 psi gauge");
}

TEST_CASE("A distance or a date falls due") {
    const Result distance = ran("next-due", {{"last", "12400 km"}, {"every", "3000 km"}, {"now", "14000"}});
    CHECK(number(distance, "due") == 15400);
    CHECK(number(distance, "left") == 1400);
    const Result date = ran("next-due", {{"last", "2026-01-31"}, {"every", "1 month"}});
    CHECK(shown(date, "due") == "2026-02-28");
    CHECK(number(date, "left") == -270);
    CHECK(shown(ran("next-due", {{"last", "2024-02-29"}, {"every", "90 days"}}), "due") == "2024-05-29");
    CHECK(refused("next-due", {{"last", "12400 km"}, {"every", "3000 km"}}).field == "now");
    CHECK(refused("next-due", {{"last", "2026-01-31"}, {"every", "3000 km"}}).field == "every");
}
