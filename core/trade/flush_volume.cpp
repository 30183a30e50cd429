#include "core/trade/calculations.h"

#include <fmt/format.h>

#include <numbers>

namespace undercowl::trade {
namespace {

using units::Dimension;

Outcome work(const Declaration& declaration, const Given& given) {
    const double bore = given.number("line_bore");
    const double line =
        std::numbers::pi / 4 * bore * bore * given.in("line_length", Dimension::Length, "mm") / 1000;
    const double system = given.number("reservoir") + line + given.number("caliper");
    const double refills = given.number("refills");
    Result result(declaration);
    result.say(fmt::format("line = pi/4 x ({:.4g} mm)^2 x {:.4g} m = {:.4g} mL", bore,
                           given.in("line_length", Dimension::Length, "m"), line));
    result.say(fmt::format("system = {:.4g} + {:.4g} + {:.4g} = {:.4g} mL", given.number("reservoir"), line,
                           given.number("caliper"), system));
    result.say(fmt::format("{:g} times the system: {:.4g} mL to have ready", refills, system * refills));
    result.put("volume", system * refills);
    result.put("refills", refills);
    result.put("system_volume", system);
    return result;
}

} // namespace

Calculation flushVolume() {
    Declaration d;
    d.name = "flush-volume";
    d.title = "Fluid for a flush";
    d.purpose = "How much brake or clutch fluid to have ready before the circuit is opened.";
    d.formula = {"system = reservoir + pi/4 bore^2 length + caliper", "volume = system x refills"};
    d.inputs = {
        quantity("reservoir", "Reservoir", Dimension::Volume, "mL", "up to the upper mark").range(0, 2000),
        quantity("line_length", "Length of line", Dimension::Length, "m", "hose and pipe together")
            .range(0, 10),
        quantity("line_bore", "Bore of line", Dimension::Length, "mm", "inside diameter, about 3 mm")
            .range(0.5, 20),
        quantity("caliper", "Caliper or cylinder", Dimension::Volume, "mL", "behind the pistons")
            .range(0, 500),
        number("refills", "Times", "how often the circuit's content is pushed through: two or more")
            .withDefault("2")
            .range(2, 6)};
    d.outputs = {quantityOut("volume", "Volume", Dimension::Volume, "mL"),
                 numberOut("refills", "Times the system's content"),
                 quantityOut("system_volume", "Content of the system", Dimension::Volume, "mL")};
    d.sources = {"volume of a cylinder", "two refills or more: rule of thumb, common practice, no source"};
    d.cautions = {
        "never let the reservoir run empty; never use again what came out",
        "flush until it runs clear, whatever the sum says",
        "brake fluid harms paint, skin and eyes; brakes are proved before the machine leaves the shop"};
    d.example = {
        {{"reservoir", "30 mL"}, {"line_length", "1.2 m"}, {"line_bore", "3.2 mm"}, {"caliper", "15 mL"}},
        {{"volume", "109.302"}, {"refills", "2"}}};
    return {d, work};
}

} // namespace undercowl::trade
