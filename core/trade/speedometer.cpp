#include "core/trade/calculations.h"

#include <fmt/format.h>

namespace undercowl::trade {
namespace {

using units::Dimension;

Outcome work(const Declaration& declaration, const Given& given) {
    const bool distance = given.has("true_distance");
    if (distance == given.has("true_speed"))
        return given.problem("true_speed",
                             distance ? "stands beside a true distance: give one of them"
                                      : "is missing, and so is true_distance",
                             "one of true_distance and true_speed");
    const Dimension dimension = distance ? Dimension::Length : Dimension::Speed;
    const units::Unit unit = units::unit(dimension, distance ? "km" : "km/h");
    const auto shown = units::parseQuantity(given.text("shown"), dimension, unit);
    if (!shown)
        return given.problem("shown", shown.error().message,
                             distance ? "a distance, such as 10.4 km" : "a speed, such as 52 km/h");
    const double read = shown->quantity().in(unit);
    const double truth = given.number(distance ? "true_distance" : "true_speed");
    if (read < 0 || read > (distance ? 1e6 : 400))
        return given.problem("shown", "is out of range", distance ? "0 to 1000000 km" : "0 to 400 km/h");
    const double error = (read - truth) / truth * 100;
    Result result(declaration);
    result.say(fmt::format("error = (shown - true)/true = ({:.5g} - {:.5g})/{:.5g} = {:.3f} %", read, truth,
                           truth, error));
    result.put("error", error, 3);
    if (error < 0 && !distance)
        result.warn(
            "it shows less than the true speed: not allowed in most places (from memory of UNECE R39)");
    return result;
}

} // namespace

Calculation speedometer() {
    Declaration d;
    d.name = "speedometer";
    d.title = "Speedometer error";
    d.purpose = "How far speedometer or odometer are out.";
    d.formula = {"error = (shown - true)/true"};
    d.inputs = {
        text("shown", "Shown", "what the dial shows, a speed or a distance"),
        quantity("true_distance", "True distance", Dimension::Length, "km", "between marks on the road")
            .optional()
            .range(0.01, 1e6),
        quantity("true_speed", "True speed", Dimension::Speed, "km/h", "by satellite or by stop-watch")
            .optional()
            .range(1, 400)};
    d.outputs = {quantityOut("error", "Error", Dimension::Number, "percent")};
    d.sources = {"definition of relative error"};
    d.cautions = {"tyre size and pressure change it; the law of the place sets what is allowed"};
    d.example = {{{"shown", "55 km/h"}, {"true_speed", "50 km/h"}}, {{"error", "10"}}};
    return {d, work};
}

} // namespace undercowl::trade
