#include "core/trade/calculations.h"

#include <fmt/format.h>

#include <cmath>
#include <numbers>

namespace undercowl::trade {
namespace {

using units::Dimension;

Outcome work(const Declaration& declaration, const Given& given) {
    const double length = given.number("wrench_length");
    const double angle = given.number("angle");
    // At a right angle the cosine leaves a rounding error, which would be shown as a length.
    const double cosine = std::fabs(angle) == 90 ? 0 : std::cos(angle * std::numbers::pi / 180);
    const double along = given.number("adapter_length") * cosine;
    if (length + along < length / 10)
        return given.problem(
            "adapter_length", "turned back so far the adapter leaves no arm",
            fmt::format("an adapter shorter than {:.0f} mm, or another angle", length * 0.9));
    const double factor = length / (length + along);
    Result result(declaration);
    result.say(fmt::format("L + E cos a = {:.4g} mm + {:.4g} mm = {:.4g} mm", length, along, length + along));
    result.say(fmt::format("setting = torque x L/(L + E cos a) = {:.4g} N.m x {:.6f}", given.number("torque"),
                           factor));
    result.put("setting", given.number("torque") * factor);
    result.put("factor", factor, 6);
    return result;
}

} // namespace

Calculation torqueAdapter() {
    Declaration d;
    d.name = "torque-adapter";
    d.title = "Torque wrench with an adapter";
    d.purpose = "What to set on the wrench when a crowfoot or extension lengthens it.";
    d.formula = {"setting = torque x L/(L + E cos a)"};
    d.inputs = {
        quantity("torque", "Torque wanted", Dimension::Torque, "N.m", "at the bolt, from the manual")
            .range(0.1, 2000),
        quantity("wrench_length", "Wrench length L", Dimension::Length, "mm",
                 "grip mark to middle of the drive square")
            .range(50, 2000),
        quantity("adapter_length", "Adapter length E", Dimension::Length, "mm",
                 "drive square to middle of the nut")
            .range(0, 1000),
        quantity("angle", "Angle a", Dimension::Angle, "deg", "0 straight ahead, 90 square, 180 turned back")
            .withDefault("0")
            .range(-180, 180)};
    d.outputs = {quantityOut("setting", "Wrench setting", Dimension::Torque, "N.m"),
                 numberOut("factor", "Factor")};
    d.sources = {"US Army TM 9-254, adapter length compensation"};
    d.cautions = {"the hand must pull at the grip mark: anywhere else the sum is wrong",
                  "the setting must lie in the wrench's range"};
    d.example = {
        {{"torque", "50 N.m"}, {"wrench_length", "300 mm"}, {"adapter_length", "50 mm"}, {"angle", "45"}},
        {{"setting", "44.7287"}}};
    return {d, work};
}

} // namespace undercowl::trade
