#include "core/trade/calculations.h"
#include "core/trade/wires.h"

#include <fmt/format.h>

#include <array>
#include <cmath>

namespace undercowl::trade {
namespace {

using units::Dimension;

struct Conductor {
    double area;
    double milliohms;
};
constexpr std::array classFive{Conductor{0.5, 39.0}, Conductor{0.75, 26.0}, Conductor{1.0, 19.5},
                               Conductor{1.5, 13.3}, Conductor{2.5, 7.98},  Conductor{4.0, 4.95},
                               Conductor{6.0, 3.3}};
constexpr std::array blades{BladeFuse{1, "black"},
                            BladeFuse{2, "grey"},
                            BladeFuse{3, "violet"},
                            BladeFuse{4, "pink"},
                            BladeFuse{5, "tan (light brown)"},
                            BladeFuse{7.5, "brown"},
                            BladeFuse{10, "red"},
                            BladeFuse{15, "blue"},
                            BladeFuse{20, "yellow"},
                            BladeFuse{25, "clear or white"},
                            BladeFuse{30, "green"},
                            BladeFuse{40, "orange"}};
constexpr std::array ceramics{BladeFuse{5, "yellow"}, BladeFuse{8, "white"}, BladeFuse{16, "red"},
                              BladeFuse{25, "blue"}};

Outcome work(const Declaration& declaration, const Given& given) {
    if (given.has("power") == given.has("current"))
        return given.problem("current",
                             given.has("current") ? "stands beside a power: give one of them"
                                                  : "is missing, and so is power",
                             "one of current and power");
    Result result(declaration);
    const double volts = given.number("voltage");
    const double amperes = given.has("current") ? given.number("current") : given.number("power") / volts;
    if (given.has("power"))
        result.say(
            fmt::format("current = {:.4g} W/{:.4g} V = {:.4g} A", given.number("power"), volts, amperes));
    const double area = given.number("area");
    if (area < 0.03 || area > 100)
        return given.problem("area", "is out of range", "0.03 to 100 mm2, or 32 to 1 AWG");
    const bool gauge = given.quantity("area").unit.symbol() == "AWG";
    const auto table = gauge ? std::nullopt : classFiveResistance(area);
    // Stranded wire outside the table: the table's 19.5 mohm/m for 1 mm2, by area.
    const double perMetre = table ? *table : gauge ? solidResistance(area) : 19.5 / area;
    const double hot = perMetre / toTwenty(given.number("temp"));
    const double metres = given.in("length", Dimension::Length, "m") * given.number("conductors");
    const double drop = amperes * hot / 1000 * metres;
    // Beyond that the load would not get its current, and the sum says nothing.
    if (drop >= volts)
        return given.problem("length",
                             fmt::format("would lose {:.3g} V of {:.4g} V in the wire", drop, volts),
                             "a thicker wire, a shorter one or a smaller load");
    result.say(fmt::format("resistance {:.4g} mohm/m ({}) at {:.3g} degC: {:.4g} mohm/m", perMetre,
                           table   ? "IEC 60228 class 5"
                           : gauge ? "solid copper, ASTM B258 size"
                                   : "by area, from IEC 60228 class 5",
                           given.number("temp"), hot));
    result.say(fmt::format("drop = I R L = {:.4g} A x {:.4g} mohm/m x {:.4g} m = {:.5g} V", amperes, hot,
                           metres, drop));
    result.put("current", amperes);
    result.put("drop", drop);
    result.put("drop_share", drop / volts);
    result.put("resistance_per_metre", {hot, units::unit(Dimension::Number, "1")},
               fmt::format("{:.5g} mohm/m", hot));
    const double largest = largestFuse(area);
    for (const BladeFuse& fuse : blades) {
        if (fuse.amperes < 1.25 * amperes)
            continue;
        if (fuse.amperes > largest) {
            result.warn(fmt::format("the load wants a fuse of {:g} A, more than this wire may stand behind "
                                    "({:g} A): take a thicker wire",
                                    fuse.amperes, largest));
            result.decide(verdict::Answer::Outside);
            return result;
        }
        result.put("fuse", fuse.amperes);
        result.put("fuse_colour", std::string(fuse.colour));
        result.say(fmt::format(
            "fuse: the next blade size from 1.25 x {:.4g} A: {:g} A; the wire may stand behind {:g} A",
            amperes, fuse.amperes, largest));
        return result;
    }
    result.warn("no blade fuse is large enough: such currents belong to the starter circuit");
    if (1.25 * amperes > largest) {
        result.warn(fmt::format("this wire may stand behind {:g} A at most: take a thicker wire", largest));
        result.decide(verdict::Answer::Outside);
    }
    return result;
}

} // namespace

std::optional<double> classFiveResistance(double area) {
    for (const Conductor& conductor : classFive)
        if (std::fabs(conductor.area - area) < 1e-6)
            return conductor.milliohms;
    return std::nullopt;
}

double solidResistance(double area) {
    return 17.241 / area;
}

double toTwenty(double celsius) {
    return 1 / (1 + 0.004 * (celsius - 20));
}

double windingToTwenty(double celsius) {
    return 1 / (1 + 0.00393 * (celsius - 20));
}

std::span<const BladeFuse> bladeFuses() {
    return blades;
}

std::span<const BladeFuse> ceramicFuses() {
    return ceramics;
}

double largestFuse(double area) {
    constexpr std::array steps{Conductor{6, 40}, Conductor{4, 40},    Conductor{2.5, 30},  Conductor{1.5, 20},
                               Conductor{1, 15}, Conductor{0.75, 10}, Conductor{0.5, 7.5}, Conductor{0.3, 5}};
    for (const Conductor& step : steps)
        if (area >= step.area)
            return step.milliohms;
    return 3;
}

Calculation wireAndFuse() {
    Declaration d;
    d.name = "wire-and-fuse";
    d.title = "Wire and fuse";
    d.purpose = "Current, voltage drop and fuse for a load at the end of a wire.";
    d.formula = {"I = P/U", "drop = I R L", "R = R20 (1 + 0.004 (t - 20))",
                 "fuse: next blade size from 1.25 I (common practice, no source)"};
    d.inputs = {
        quantity("power", "Power of the load", Dimension::Power, "W", "rated; give this or the current")
            .optional()
            .range(0.01, 2000),
        quantity("current", "Current of the load", Dimension::Current, "A", "give this or the power")
            .optional()
            .range(0.001, 300),
        quantity("voltage", "Voltage", Dimension::Voltage, "V", "nominal").withDefault("12").range(1, 60),
        quantity("length", "Length of wire", Dimension::Length, "m", "one way").range(0.01, 50),
        quantity("area", "Cross-section", Dimension::Area, "mm2", "of the copper; 18 AWG is read too"),
        number("conductors", "Conductors", "2 where the return is a wire as well")
            .withDefault("1")
            .range(1, 2),
        quantity("temp", "Temperature of the wire", Dimension::Temperature, "degC", "warm beside an engine")
            .withDefault("20")
            .range(-40, 150)};
    d.outputs = {quantityOut("current", "Current", Dimension::Current, "A"),
                 quantityOut("drop", "Drop", Dimension::Voltage, "V"),
                 numberOut("drop_share", "Share of the voltage"),
                 quantityOut("fuse", "Fuse", Dimension::Current, "A"),
                 textOut("fuse_colour", "Colour of the fuse"),
                 numberOut("resistance_per_metre", "Resistance, mohm/m")};
    d.givesVerdict = true;
    d.sources = {"IEC 60228 class 5 plain copper and temperature factors",
                 "ASTM B258 wire gauge, IEC 60028 resistivity", "ISO 8820-3 blade fuse colours",
                 "fuse choice and what a wire may stand behind: common practice, no source"};
    d.cautions = {
        "a fuse protects the wire, not the load: never fit a larger one",
        "glass fuses by IEC 60127 carry their speed in letters, FF F M T TT from very fast to very slow: "
        "renew like by like",
        "the machine's wiring diagram wins"};
    d.validity = {"copper; class 5 areas from the table, others scaled by area"};
    d.example = {{{"current", "10 A"}, {"length", "2 m"}, {"area", "2.5 mm2"}},
                 {{"drop", "0.1596"}, {"drop_share", "0.0133"}, {"fuse", "15"}}};
    return {d, work};
}

} // namespace undercowl::trade
