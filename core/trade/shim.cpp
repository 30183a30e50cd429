#include "core/trade/calculations.h"

#include <fmt/format.h>

#include <cmath>

namespace undercowl::trade {
namespace {

using units::Dimension;

Outcome work(const Declaration& declaration, const Given& given) {
    const double wanted = given.number("shim") + given.number("measured") - given.number("wanted");
    if (wanted <= 0)
        return given.problem("shim", "is too thin for that clearance: nothing would be left of the new one",
                             "check the three figures; the valve may not seat");
    Result result(declaration);
    result.say(fmt::format("new shim = {:.4g} + {:.4g} - {:.4g} = {:.4f} mm", given.number("shim"),
                           given.number("measured"), given.number("wanted"), wanted));
    result.put("shim", wanted);
    result.put("change", given.number("measured") - given.number("wanted"));
    if (given.has("step")) {
        const double step = given.number("step");
        const double nearest = std::round(wanted / step) * step;
        result.put("nearest", nearest);
        result.put("clearance_then", given.number("wanted") + wanted - nearest);
        result.say(fmt::format("nearest in steps of {:g} mm: {:.4g} mm, which leaves {:.4f} mm", step,
                               nearest, given.number("wanted") + wanted - nearest));
    }
    return result;
}

} // namespace

Calculation shim() {
    Declaration d;
    d.name = "shim";
    d.title = "Valve shim";
    d.purpose = "Which shim brings the clearance to what is wanted.";
    d.formula = {"new shim = old shim + measured clearance - wanted clearance"};
    d.inputs = {
        quantity("measured", "Clearance measured", Dimension::Length, "mm", "cold, with a feeler gauge")
            .range(0, 5),
        quantity("wanted", "Clearance wanted", Dimension::Length, "mm", "from the manual").range(0, 5),
        quantity("shim", "Shim fitted", Dimension::Length, "mm",
                 "measured: the stamp may be worn off or wrong")
            .range(0.1, 10),
        quantity("step", "Steps of the shims", Dimension::Length, "mm", "often 0.05 or 0.025")
            .optional()
            .range(0.005, 0.5)};
    d.outputs = {quantityOut("shim", "Shim", Dimension::Length, "mm"),
                 quantityOut("change", "Change", Dimension::Length, "mm"),
                 quantityOut("nearest", "Nearest in steps", Dimension::Length, "mm"),
                 quantityOut("clearance_then", "Clearance with the nearest", Dimension::Length, "mm")};
    d.sources = {"difference: a thicker shim takes up clearance"};
    d.cautions = {
        "turn the engine by hand and measure again afterwards",
        "no clearance at all means that the valve may not close: measure again with a thinner shim"};
    d.example = {{{"measured", "0.08 mm"}, {"wanted", "0.15 mm"}, {"shim", "2.60 mm"}},
                 {{"shim", "2.53"}, {"change", "-0.07"}}};
    return {d, work};
}

} // namespace undercowl::trade
