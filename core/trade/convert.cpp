#include "core/trade/calculations.h"

#include "core/units/format.h"
#include "core/units/parse.h"

#include <optional>

namespace undercowl::trade {
namespace {

using units::Unit;

Outcome work(const Declaration& declaration, const Given& given) {
    const auto split = units::splitQuantity(given.text("value"));
    if (!split)
        return given.problem("value", split.error().message, "a number with its unit, such as 25 lbf.ft");
    if (const auto trap = units::knownAmbiguity(split->unitText))
        return given.problem("value", "has an ambiguous unit", *trap);
    if (const auto trap = units::knownAmbiguity(given.text("to")))
        return given.problem("to", "is ambiguous", *trap);
    const auto from = units::findUnits(split->unitText);
    const auto to = units::findUnits(given.text("to"));
    if (from.empty() || split->unitText.empty())
        return given.problem("value",
                             split->unitText.empty() ? "has no unit" : "has a unit that is not known here",
                             "a number with its unit, such as 25 lbf.ft");
    if (to.empty())
        return given.problem("to", "is not a unit that is known here",
                             units::symbolsOf(from.front().dimension()));
    // The plain reading of a plain symbol is preferred: a pressure without "gauge" or "absolute" stays
    // without.
    std::optional<std::pair<Unit, Unit>> best;
    for (const Unit source : from)
        for (const Unit target : to) {
            if (source.dimension() != target.dimension())
                continue;
            const auto plainness = [&](const std::pair<Unit, Unit>& pair) {
                return (pair.first.symbol() == split->unitText ? 1 : 0) +
                       (pair.second.symbol() == given.text("to") ? 1 : 0) -
                       (pair.first.symbol().find(' ') != std::string::npos ? 2 : 0);
            };
            if (!best || plainness({source, target}) > plainness(*best))
                best.emplace(source, target);
        }
    if (!best) {
        const auto refusal = units::convert({split->number.value, from.front()}, to.front());
        return given.problem("to", refusal.error().message, units::symbolsOf(from.front().dimension()));
    }
    if (best->first.entry().law == units::Law::Reciprocal && split->number.value <= 0)
        return given.problem("value", "must be above zero for a consumption", "such as 60 mpg(imp)");
    if (best->second.entry().law == units::Law::Reciprocal && split->number.value == 0)
        return given.problem("value", "must not be zero for a consumption", "such as 3.5 L/100km");
    if (best->second.entry().law == units::Law::Gauge && split->number.value <= 0)
        return given.problem("value", "must be above zero for a wire", "such as 0.75 mm2");
    if (best->first.dimension() == units::Dimension::Temperature) {
        const double kelvin = units::Quantity{split->number.value, best->first}.base() + 273.15;
        if (kelvin < 0)
            return given.problem("value", "is below absolute zero", "-273.15 degC and more");
    }
    if (best->first.dimension() == units::Dimension::AbsolutePressure && split->number.value < 0)
        return given.problem("value", "an absolute pressure cannot be negative", "0 and more");
    Result result(declaration);
    const units::AsTyped typed{split->number, best->first};
    const units::Quantity converted{typed.quantity().in(best->second), best->second};
    result.say(typed.text() + " = " + units::formatSignificant(converted.value, 10) + " " +
               best->second.symbol() + "; factor from " + best->second.entry().source);
    // Exact to the user of the value, sensible to the reader of the text.
    result.put("value", converted,
               units::formatToStep(converted,
                                   units::convertedStep(typed.quantity(), split->number.step, best->second)));
    return result;
}

} // namespace

Calculation convert() {
    Declaration d;
    d.name = "convert";
    d.title = "Convert a unit";
    d.purpose = "The same quantity in another unit, by exact factors.";
    d.formula = {"value x exact ratio of the definitions"};
    d.inputs = {text("value", "Value", "a number with its unit, such as 25 lbf.ft"),
                text("to", "To", "the unit wanted, such as N.m")};
    d.outputs = {textOut("value", "Value in the unit wanted")};
    d.sources = {
        "international yard and pound agreement 1959; CGPM 1901; NIST SP 811 appendix B; SI Brochure"};
    d.cautions = {"torque and energy, gauge and absolute pressure are not converted into each other"};
    d.example = {{{"value", "25 lbf.ft"}, {"to", "N.m"}}, {{"value", "33.89544870828501"}}};
    return {d, work};
}

} // namespace undercowl::trade
