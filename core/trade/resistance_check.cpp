#include "core/trade/calculations.h"
#include "core/trade/wires.h"

#include <fmt/format.h>

namespace undercowl::trade {
namespace {

using units::Dimension;

Outcome work(const Declaration& declaration, const Given& given) {
    if (!given.has("limit_low") && !given.has("limit_high"))
        return given.problem("limit_high", "is missing, and so is limit_low", "one or both, from the manual");
    const double measured = given.number("measured");
    const bool coil = given.text("kind") == "coil";
    const double factor = coil ? windingToTwenty(given.number("temp")) : 1;
    const double at20 = measured * factor;
    Result result(declaration);
    if (coil)
        result.say(fmt::format("at 20 degC: {:.4g} ohm/(1 + 0.00393 x ({:.4g} - 20)) = {:.5g} ohm", measured,
                               given.number("temp"), at20));
    else
        result.say("a connection is not corrected for temperature");
    result.put("resistance_20", at20, 5);
    verdict::Limits limits;
    if (given.has("limit_low"))
        limits.low = given.quantity("limit_low");
    if (given.has("limit_high"))
        limits.high = given.quantity("limit_high");
    if (limits.low && limits.high && limits.low->base() > limits.high->base())
        return given.problem("limit_low", "is above limit_high",
                             "the manual's two figures, the smaller first");
    limits.source = {verdict::Trust::Manual, "as given"};
    const units::Unit ohm = units::unit(Dimension::Resistance, "ohm");
    if (given.has("uncertainty")) {
        // What the meter may be off by shrinks or grows with the reading.
        const double expanded = given.number("uncertainty") * factor;
        if (coil)
            result.say(fmt::format("uncertainty of the reading at 20 degC: {:.4g} ohm", expanded));
        result.judge({at20, ohm}, limits, {expanded, ohm});
        return result;
    }
    // An ordinary meter: 2 % and two hundredths of an ohm for leads and contacts.
    const double ordinary = (0.02 * measured + 0.02) * factor;
    result.warn(fmt::format(
        "no uncertainty was given: {:.3g} ohm is assumed, 2 % and 0.02 ohm (common practice, no source)",
        ordinary));
    result.judge({at20, ohm}, limits, {ordinary, ohm});
    return result;
}

} // namespace

Calculation resistanceCheck() {
    Declaration d;
    d.name = "resistance-check";
    d.title = "Resistance of a coil or connection";
    d.purpose = "A winding's resistance brought to 20 degC and held against its limits; an earth or a "
                "continuity as it is.";
    d.formula = {"R20 = R/(1 + 0.00393 (t - 20)) for copper windings"};
    d.inputs = {
        quantity("measured", "Measured", Dimension::Resistance, "ohm",
                 "less the resistance of the leads held together")
            .range(0, 1e8),
        quantity("limit_low", "Lower limit", Dimension::Resistance, "ohm", "from the manual, at 20 degC")
            .optional()
            .range(0, 1e8),
        quantity("limit_high", "Upper limit", Dimension::Resistance, "ohm", "from the manual, at 20 degC")
            .optional()
            .range(0, 1e8),
        quantity("temp", "Temperature", Dimension::Temperature, "degC", "of the winding")
            .withDefault("20")
            .range(-40, 200),
        choice("kind", "What it is",
               {{"coil", "coil or winding"}, {"earth", "earth"}, {"continuity", "continuity"}},
               "only copper windings are corrected")
            .withDefault("coil"),
        quantity("uncertainty", "Uncertainty", Dimension::Resistance, "ohm",
                 "expanded (k = 2), of the reading as measured; without it an ordinary meter is assumed")
            .optional()
            .range(1e-6, 1e7)};
    d.outputs = {quantityOut("resistance_20", "Resistance at 20 degC", Dimension::Resistance, "ohm")};
    d.givesVerdict = true;
    d.sources = {"IEC 60028: temperature coefficient of annealed copper 0.00393 1/K at 20 degC"};
    d.cautions = {"disconnect the part first: what lies beside it is measured too",
                  "a winding can pass cold and fail hot"};
    d.example = {{{"measured", "5.2 ohm"}, {"limit_low", "3.5"}, {"limit_high", "5.5"}, {"temp", "60"}},
                 {{"resistance_20", "4.49359"}, {"verdict", "within"}}};
    return {d, work};
}

} // namespace undercowl::trade
