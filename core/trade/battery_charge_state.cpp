#include "core/trade/battery.h"
#include "core/trade/calculations.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <span>

namespace undercowl::trade {
namespace {

using units::Dimension;

struct Point {
    double reading;
    double charge;
};

// Battery-maker state-of-charge table at 80 F (1.265 full-charge base).
constexpr std::array floodedVolts{Point{11.89, 0}, Point{12.06, 25}, Point{12.24, 50}, Point{12.45, 75},
                                  Point{12.65, 100}};
constexpr std::array floodedGravity{Point{1.120, 0}, Point{1.155, 25}, Point{1.190, 50}, Point{1.225, 75},
                                    Point{1.265, 100}};
// Motorcycle-maker AGM battery instruction sheet.
constexpr std::array agmVolts{Point{11.8, 0}, Point{12.0, 25}, Point{12.3, 50}, Point{12.6, 75},
                              Point{12.7, 100}};

double between(std::span<const Point> table, double reading) {
    if (reading <= table.front().reading)
        return table.front().charge;
    for (std::size_t i = 1; i < table.size(); ++i)
        if (reading <= table[i].reading)
            return table[i - 1].charge + (reading - table[i - 1].reading) /
                                             (table[i].reading - table[i - 1].reading) *
                                             (table[i].charge - table[i - 1].charge);
    return table.back().charge;
}

std::string nextStep(double charge, bool flooded) {
    if (charge >= 75)
        return "nothing: ready; a load test proves it";
    if (charge >= 25)
        return "charge at no more than a tenth of its ampere hours, rest an hour or two, measure again";
    return flooded
               ? "charge slowly and check every cell with the hydrometer: cells that differ by more than "
                 "0.05 are "
                 "worn out (common practice, no source)"
               : "charge slowly, rest an hour or two, measure again; if it stays below half charge, renew it "
                 "(common practice, no source)";
}

Outcome work(const Declaration& declaration, const Given& given) {
    const bool flooded = given.text("type") == "flooded";
    if (given.has("voltage") == given.has("specific_gravity"))
        return given.problem("voltage",
                             given.has("voltage") ? "stands beside a specific gravity: give one of them"
                                                  : "is missing, and so is specific_gravity",
                             "one of voltage and specific_gravity");
    Result result(declaration);
    double charge = 0;
    bool rested = true;
    if (given.has("specific_gravity")) {
        if (!flooded)
            return given.problem("specific_gravity", "cannot be read in a sealed AGM battery", "voltage");
        const double raw = given.number("specific_gravity");
        const double corrected = correctedGravity(raw, given.number("temp"));
        result.say(fmt::format("specific gravity at 26.7 degC: {:.4f} + 0.004 x ({:.1f} F - 80)/10 = {:.4f}",
                               raw, given.in("temp", Dimension::Temperature, "degF"), corrected));
        charge = between(floodedGravity, corrected);
        result.put("corrected_gravity", corrected);
    } else {
        const double scale = given.text("nominal") == "6" ? 2 : 1;
        const double volts = given.number("voltage") * scale;
        if (volts > 16)
            return given.problem("voltage", "is more than a battery at rest shows",
                                 scale > 1 ? "up to 8 V for a 6 V battery" : "up to 16 V for a 12 V battery");
        if (scale > 1)
            result.say(
                fmt::format("a 6 V battery has half the voltage of the table: {:.4g} V counts as {:.4g} V",
                            given.number("voltage"), volts));
        rested = volts <= 13;
        if (!rested)
            result.warn("above 13 V it is charging or has not rested: wait an hour or two after charging, "
                        "then measure again");
        if (volts < 10.5)
            result.warn(
                "so low a voltage means a dead cell or a deep discharge, or the nominal voltage is wrong");
        charge = flooded ? between(floodedVolts, volts) : between(agmVolts, volts);
    }
    result.say(
        fmt::format("between the points of the {} table: {:.1f} %", flooded ? "flooded" : "AGM", charge));
    result.put("charge", charge, 3);
    result.put("next_step", rested ? nextStep(charge, flooded)
                                   : "no charge can be told yet: let it rest an hour or two, measure again");
    return result;
}

} // namespace

double correctedGravity(double reading, double celsius) {
    return reading + 0.004 * (celsius * 1.8 + 32 - 80) / 10;
}

Calculation batteryChargeState() {
    Declaration d;
    d.name = "battery-charge-state";
    d.title = "Charge of a battery";
    d.purpose = "How full a lead-acid battery is, from its rested voltage or its acid.";
    d.formula = {"straight lines between the points of the makers' tables",
                 "specific gravity + 0.004 for each 10 F (5.56 K) above 80 F (26.7 degC)"};
    d.inputs = {quantity("voltage", "Voltage at rest", Dimension::Voltage, "V",
                         "one to two hours after charging, nothing switched on")
                    .optional()
                    .range(0, 16),
                number("specific_gravity", "Specific gravity", "by hydrometer; flooded batteries only")
                    .optional()
                    .range(1.0, 1.4),
                quantity("temp", "Temperature", Dimension::Temperature, "degC", "of the acid")
                    .withDefault("26.7")
                    .range(-40, 60),
                choice("type", "Type", {{"flooded", "flooded, with caps"}, {"agm", "AGM, sealed"}},
                       "printed on the case")
                    .withDefault("flooded"),
                choice("nominal", "Nominal voltage", {{"12", "12 V"}, {"6", "6 V"}}, "printed on the case")
                    .withDefault("12")};
    d.outputs = {quantityOut("charge", "Charge", Dimension::Number, "percent"),
                 textOut("next_step", "Next step"),
                 numberOut("corrected_gravity", "Specific gravity at 26.7 degC")};
    d.sources = {"flooded: battery-maker state-of-charge table at 80 F",
                 "AGM: motorcycle-maker battery instruction sheet",
                 "hydrometer: battery-maker temperature-compensation table"};
    d.cautions = {"acid burns and charging gas explodes: glasses, gloves, no sparks, negative lead off first",
                  "voltage alone does not prove a battery: a worn one rests high and falls under load"};
    d.validity = {"rested one to two hours; published tables differ by up to 0.09 V; voltage is not "
                  "corrected for temperature for want of a second source"};
    d.example = {{{"voltage", "12.24 V"}, {"type", "flooded"}}, {{"charge", "50"}}};
    return {d, work};
}

} // namespace undercowl::trade
