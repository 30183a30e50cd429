#include "core/trade/air.h"
#include "core/trade/calculations.h"

#include <fmt/format.h>

namespace undercowl::trade {
namespace {

using units::Dimension;

Outcome work(const Declaration& declaration, const Given& given) {
    const double ambient = standardPascals(given.in("altitude", Dimension::Length, "m")) / 1000;
    const double reading = given.number("reading");
    const double factor = seaLevelPascals / 1000 / ambient;
    Result result(declaration);
    result.say(fmt::format("ambient at that altitude: {:.3f} kPa", ambient));
    result.say(
        fmt::format("(reading + ambient)/ambient stays the same: {:.4g} kPa x 101.325/{:.3f} = {:.4f} kPa",
                    reading, ambient, reading * factor));
    result.put("sea_level", reading * factor);
    result.put("factor", factor, 5);
    return result;
}

} // namespace

Calculation compression() {
    Declaration d;
    d.name = "compression";
    d.title = "Compression reading and altitude";
    d.purpose = "What the compression gauge would have shown at sea level, to compare with the manual.";
    d.formula = {"(reading + ambient)/ambient stays the same, so sea level = reading x 101.325/ambient"};
    d.inputs = {
        quantity("reading", "Reading", Dimension::GaugePressure, "kPa gauge", "throttle open, engine warm")
            .range(0, 4000),
        quantity("altitude", "Altitude", Dimension::Length, "m", "above sea level").range(-430, 5000)};
    d.outputs = {quantityOut("sea_level", "At sea level", Dimension::GaugePressure, "kPa gauge"),
                 numberOut("factor", "Factor")};
    d.sources = {"U.S. Standard Atmosphere 1976",
                 "proportion: the cylinder multiplies whatever pressure it takes in"};
    d.cautions = {
        "gauges and cranking speeds differ: compare with the manual's method, and cylinders with each other",
        "ignition off, plug lead earthed, hands away from the kick-start"};
    d.example = {{{"reading", "1000 kPa"}, {"altitude", "1500 m"}}, {{"sea_level", "1198.318"}}};
    return {d, work};
}

} // namespace undercowl::trade
