#include "core/trade/calculations.h"

#include <fmt/format.h>

#include <numbers>

namespace undercowl::trade {
namespace {

using units::Dimension;

Outcome work(const Declaration& declaration, const Given& given) {
    const double bore = given.number("bore");
    const double stroke = given.number("stroke");
    const double chamber = given.number("chamber");
    const double area = std::numbers::pi / 4 * bore * bore / 1000; // cm3 for each mm
    const double swept = area * stroke;
    double effective = swept;
    Result result(declaration);
    result.say(fmt::format("swept volume = pi/4 x ({:g} mm)^2 x {:g} mm = {:.4f} cm3", bore, stroke, swept));
    if (given.has("exhaust_height")) {
        if (given.number("exhaust_height") >= stroke)
            return given.problem("exhaust_height", "is not less than the stroke",
                                 fmt::format("0 to {:g} mm", stroke));
        effective = area * (stroke - given.number("exhaust_height"));
        result.say(fmt::format("from exhaust closing only {:.4f} cm3 are compressed", effective));
    }
    result.say(fmt::format("ratio = ({:.4f} + {:g})/{:g} = {:.4f}", effective, chamber, chamber,
                           (effective + chamber) / chamber));
    result.put("ratio", (effective + chamber) / chamber);
    result.put("displacement", swept);
    return result;
}

} // namespace

Calculation compressionRatio() {
    Declaration d;
    d.name = "compression-ratio";
    d.title = "Compression ratio";
    d.purpose = "From bore, stroke and the volume of the chamber.";
    d.formula = {"ratio = (Vs + Vc)/Vc with Vs = pi/4 bore^2 stroke",
                 "two-stroke from exhaust closing: stroke less the port's height above bottom dead centre"};
    d.inputs = {quantity("bore", "Bore", Dimension::Length, "mm", "of the cylinder").range(10, 150),
                quantity("stroke", "Stroke", Dimension::Length, "mm", "of the piston").range(10, 200),
                quantity("chamber", "Chamber", Dimension::Volume, "cm3",
                         "all that is left at top dead centre, by filling with oil")
                    .range(0.5, 500),
                quantity("exhaust_height", "Exhaust port", Dimension::Length, "mm",
                         "upper edge above bottom dead centre; for two-strokes counted from exhaust closing")
                    .optional()
                    .range(0, 200)};
    d.outputs = {numberOut("ratio", "Ratio, to 1"),
                 quantityOut("displacement", "Displacement of one cylinder", Dimension::Volume, "cm3")};
    d.sources = {"definition (as in Heywood 1988, ch. 2)"};
    d.cautions = {"two-stroke makers may quote the ratio from exhaust closing: say which",
                  "a skimmed head raises the ratio: fuel and timing must suit it"};
    d.example = {{{"bore", "38.4 mm"}, {"stroke", "43 mm"}, {"chamber", "6.5 cm3"}},
                 {{"ratio", "8.6614"}, {"displacement", "49.799"}}};
    return {d, work};
}

} // namespace undercowl::trade
