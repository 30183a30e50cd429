#include "core/trade/calculations.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace undercowl::trade {
namespace {

using units::Dimension;
constexpr double degree = std::numbers::pi / 180;

Outcome work(const Declaration& declaration, const Given& given) {
    const double stroke = given.number("stroke");
    const double rod = given.number("rod");
    const double crank = stroke / 2;
    if (rod <= crank)
        return given.problem("rod", "is not longer than half the stroke",
                             fmt::format("more than {:g} mm; about twice the stroke is usual", crank));
    if (given.has("degrees") == given.has("travel"))
        return given.problem("degrees",
                             given.has("degrees") ? "stands beside a travel: give one of them"
                                                  : "is missing, and so is travel",
                             "one of degrees and travel");
    Result result(declaration);
    double degrees = 0;
    double travel = 0;
    if (given.has("degrees")) {
        degrees = given.number("degrees");
        const double sine = crank * std::sin(degrees * degree);
        travel = crank * (1 - std::cos(degrees * degree)) + rod - std::sqrt(rod * rod - sine * sine);
        result.say(fmt::format(
            "x = r (1 - cos a) + l - sqrt(l^2 - r^2 sin^2 a) with r = {:g} mm, l = {:g} mm: {:.4f} mm", crank,
            rod, travel));
    } else {
        travel = given.number("travel");
        if (travel > stroke)
            return given.problem("travel", "is more than the stroke", fmt::format("0 to {:g} mm", stroke));
        const double reach = crank + rod - travel;
        const double cosine = (reach * reach + crank * crank - rod * rod) / (2 * crank * reach);
        degrees = std::acos(std::clamp(cosine, -1.0, 1.0)) / degree;
        result.say(fmt::format("cos a = ((r + l - x)^2 + r^2 - l^2)/(2 r (r + l - x)): {:.4f} deg", degrees));
    }
    result.put("travel", travel, 5);
    result.put("degrees", degrees, 5);
    if (given.has("flywheel_diameter")) {
        const double diameter = given.number("flywheel_diameter");
        result.say(fmt::format("arc = pi D a/360 = {:.4f} mm; chord = D sin(a/2) = {:.4f} mm",
                               std::numbers::pi * diameter * degrees / 360,
                               diameter * std::sin(degrees * degree / 2)));
        result.put("arc", std::numbers::pi * diameter * degrees / 360, 5);
        result.put("chord", diameter * std::sin(degrees * degree / 2), 5);
    }
    return result;
}

} // namespace

Calculation timing() {
    Declaration d;
    d.name = "timing";
    d.title = "Ignition timing";
    d.purpose = "Crank angle to piston travel and back, and the mark on the flywheel.";
    d.formula = {"x = r (1 - cos a) + l - sqrt(l^2 - r^2 sin^2 a), r = stroke/2",
                 "cos a = ((r + l - x)^2 + r^2 - l^2)/(2 r (r + l - x))",
                 "arc = pi D a/360, chord = D sin(a/2)"};
    d.inputs = {
        quantity("stroke", "Stroke", Dimension::Length, "mm", "of the piston").range(10, 200),
        quantity("rod", "Connecting rod", Dimension::Length, "mm", "between centres").range(20, 400),
        quantity("degrees", "Crank angle", Dimension::Angle, "deg",
                 "from top dead centre; give this or the travel")
            .optional()
            .range(0, 180),
        quantity("travel", "Piston travel", Dimension::Length, "mm",
                 "from top dead centre; give this or the angle")
            .optional()
            .range(0, 200),
        quantity("flywheel_diameter", "Flywheel diameter", Dimension::Length, "mm", "where the mark is to go")
            .optional()
            .range(10, 500)};
    d.outputs = {quantityOut("travel", "Piston travel", Dimension::Length, "mm"),
                 quantityOut("degrees", "Crank angle", Dimension::Angle, "deg"),
                 quantityOut("arc", "Arc on the flywheel", Dimension::Length, "mm"),
                 quantityOut("chord", "Chord on the flywheel", Dimension::Length, "mm")};
    d.sources = {
        "slider-crank geometry (as in Heywood 1988, Internal Combustion Engine Fundamentals, ch. 2)"};
    d.cautions = {"the figure itself is the manual's: too early holes the piston",
                  "a tape lies along the arc, calipers measure the chord"};
    d.validity = {"centred piston pin; dial gauge in line with the cylinder"};
    d.example = {{{"stroke", "54 mm"}, {"rod", "100 mm"}, {"degrees", "22"}}, {{"travel", "2.4789"}}};
    return {d, work};
}

} // namespace undercowl::trade
