#include "core/trade/calculations.h"

#include <fmt/format.h>

namespace undercowl::trade {
namespace {

using units::Dimension;

Outcome work(const Declaration& declaration, const Given& given) {
    const double rpm = given.number("rpm");
    const double speed =
        rpm / given.number("ratio") * given.in("circumference", Dimension::Length, "m") * 60 / 1000;
    Result result(declaration);
    result.say(fmt::format("speed = {:.5g} rpm/{:.4g} x {:.4g} m x 60/1000 = {:.4f} km/h", rpm,
                           given.number("ratio"), given.in("circumference", Dimension::Length, "m"), speed));
    result.put("speed", speed);
    if (given.has("stroke")) {
        const double piston = given.number("stroke") * rpm / 30000;
        result.say(fmt::format("mean piston speed = S n/30000 = {:.4f} m/s", piston));
        result.put("piston_speed", piston, 5);
    }
    return result;
}

} // namespace

Calculation gearing() {
    Declaration d;
    d.name = "gearing";
    d.title = "Speed from gearing";
    d.purpose = "Road speed at an engine speed.";
    d.formula = {"speed = rpm/ratio x circumference",
                 "mean piston speed = stroke x rpm/30000 (mm, 1/min, m/s)"};
    d.inputs = {
        quantity("rpm", "Engine speed", Dimension::RotationalSpeed, "rpm", "of the crankshaft")
            .range(1, 25000),
        number("ratio", "Overall ratio", "engine turns for one turn of the wheel, all stages multiplied")
            .range(0.5, 200),
        quantity("circumference", "Circumference", Dimension::Length, "mm",
                 "of the driven tyre, rolled out under load")
            .range(300, 4000),
        quantity("stroke", "Stroke", Dimension::Length, "mm", "for the mean piston speed")
            .optional()
            .range(10, 200)};
    d.outputs = {quantityOut("speed", "Speed", Dimension::Speed, "km/h"),
                 quantityOut("piston_speed", "Mean piston speed", Dimension::Speed, "m/s")};
    d.sources = {"geometry", "mean piston speed: definition (as in Heywood 1988, ch. 2)"};
    d.cautions = {"no slip of belt, clutch or tyre is allowed for"};
    d.example = {{{"rpm", "6000"}, {"ratio", "8"}, {"circumference", "1360 mm"}, {"stroke", "57 mm"}},
                 {{"speed", "61.2"}, {"piston_speed", "11.4"}}};
    return {d, work};
}

} // namespace undercowl::trade
