// What must hold for any numbers.
#include "tests/trade/other_routes.h"

#include <cmath>

using namespace undercowl::trade;

TEST_CASE("There and back again") {
    Random random;
    for (int i = 0; i < 100; ++i) {
        const double p = random.between(120, 300);
        const double t1 = random.between(-10, 40);
        const double t2 = random.between(-10, 40);
        const double h = random.between(0, 2500);
        const Result there = ran("tyre-pressure-shift", {{"pressure", exact(p)},
                                                         {"temp_from", exact(t1)},
                                                         {"temp_to", exact(t2)},
                                                         {"altitude_to", exact(h)}});
        const Result back = ran("tyre-pressure-shift", {{"pressure", exact(number(there, "pressure"))},
                                                        {"temp_from", exact(t2)},
                                                        {"temp_to", exact(t1)},
                                                        {"altitude_from", exact(h)}});
        CHECK(number(back, "pressure") == Approx(p));

        const double stroke = random.between(30, 80);
        const double rod = random.between(0.8 * stroke, 3 * stroke);
        const double degrees = random.between(0.5, 179);
        const Result travel =
            ran("timing", {{"stroke", exact(stroke)}, {"rod", exact(rod)}, {"degrees", exact(degrees)}});
        const Result angle = ran(
            "timing",
            {{"stroke", exact(stroke)}, {"rod", exact(rod)}, {"travel", exact(number(travel, "travel"))}});
        CHECK(number(angle, "degrees") == Approx(degrees).margin(1e-4));

        const double k = random.between(0.1, 0.3);
        const Result torque = ran("bolt-torque", {{"thread", "M10x1.25"},
                                                  {"class", "10.9"},
                                                  {"nut_factor", exact(k)},
                                                  {"utilisation", exact(random.between(0.2, 0.9))}});
        const Result preload = ran("bolt-preload", {{"thread", "M10x1.25"},
                                                    {"class", "10.9"},
                                                    {"nut_factor", exact(k)},
                                                    {"torque", exact(number(torque, "torque"))}});
        CHECK(number(preload, "preload") == Approx(number(torque, "preload")));

        const double measured = random.between(0, 0.5);
        const Result shim = ran("shim", {{"measured", exact(measured)}, {"wanted", "0.15"}, {"shim", "2.5"}});
        const Result undone =
            ran("shim",
                {{"measured", "0.15"}, {"wanted", exact(measured)}, {"shim", exact(number(shim, "shim"))}});
        CHECK(number(undone, "shim") == Approx(2.5));
    }
}

TEST_CASE("More of the cause is more of the effect") {
    const auto rises = [](const std::string& name, Typed typed, const std::string& in, double from, double to,
                          const std::string& out, int sign) {
        double before = sign > 0 ? -1e300 : 1e300;
        for (int i = 0; i <= 20; ++i) {
            typed[in] = exact(from + (to - from) * i / 20);
            const double now = number(ran(name, typed), out);
            INFO(name << " " << in << "=" << typed[in]);
            CHECK(sign * now >= sign * before);
            before = now;
        }
    };
    rises("tyre-pressure-shift", {{"pressure", "200"}, {"temp_from", "20"}}, "temp_to", -20, 60, "pressure",
          1);
    rises("tyre-pressure-shift", {{"pressure", "200"}, {"temp_from", "20"}, {"temp_to", "20"}}, "altitude_to",
          0, 4000, "pressure", 1);
    rises("battery-charge-state", {{"type", "flooded"}}, "voltage", 11, 13, "charge", 1);
    rises("battery-charge-state", {{"type", "agm"}}, "voltage", 11, 13, "charge", 1);
    rises("battery-charge-state", {}, "specific_gravity", 1.1, 1.3, "charge", 1);
    rises("air-density", {{"temp", "15"}}, "altitude", 0, 4000, "density", -1);
    rises("air-density", {{"pressure", "1000"}, {"temp", "25"}}, "humidity", 0, 100, "density", -1);
    rises("jetting", {{"jet", "100"}, {"altitude_from", "0"}}, "altitude_to", 0, 3000, "jet", -1);
    rises("wire-and-fuse", {{"current", "5"}, {"length", "2"}}, "area", 0.75, 6, "drop", -1);
    rises("bolt-torque", {{"thread", "M8"}, {"class", "8.8"}}, "friction", 0.05, 0.4, "torque", 1);
    rises("compression-ratio", {{"bore", "40"}, {"stroke", "40"}}, "chamber", 3, 20, "ratio", -1);
    rises("premix", {{"fuel", "5"}}, "ratio", 16, 100, "oil", -1);
    rises("timing", {{"stroke", "50"}, {"rod", "100"}}, "degrees", 0, 180, "travel", 1);
    rises("standing-drain", {{"capacity", "6"}, {"days", "10"}}, "current", 0.001, 0.02, "charge_lost", 1);
    rises("lamp-budget", {{"lamps", "60 W"}}, "generator", 50, 150, "spare", 1);
}

TEST_CASE("Whatever is typed, a calculation answers or says why not") {
    const std::vector<std::string> junk{"",
                                        " ",
                                        "x",
                                        "-1",
                                        "0",
                                        "1e308",
                                        "-1e308",
                                        "nan",
                                        "inf",
                                        "1/0",
                                        "1,5",
                                        "1.5.2",
                                        "99999999999999999999",
                                        "1 N.m",
                                        "1 V",
                                        "50:1",
                                        "\xff\xfe",
                                        "'; drop",
                                        "0 W x",
                                        "x 2",
                                        "2 x",
                                        ",,,",
                                        "+",
                                        "M",
                                        "Mx",
                                        "2026-13-01",
                                        "AWG",
                                        "\u00bd"};
    for (const Calculation& calculation : calculations())
        for (const Input& input : calculation.declaration.inputs)
            for (const std::string& text : junk) {
                Typed typed(calculation.declaration.example.inputs.begin(),
                            calculation.declaration.example.inputs.end());
                typed[input.key] = text;
                INFO(calculation.declaration.name << " " << input.key << "=" << text);
                const Outcome outcome = run(calculation, typed, exampleDay());
                if (!outcome) {
                    CHECK_FALSE(outcome.error().field.empty());
                    CHECK_FALSE(outcome.error().reason.empty());
                    continue;
                }
                for (const auto& [key, value] : outcome->values)
                    if (const auto* quantity = std::get_if<undercowl::units::Quantity>(&value.value))
                        CHECK(std::isfinite(quantity->value));
            }
}
