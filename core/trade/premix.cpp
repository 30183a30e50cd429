#include "core/trade/calculations.h"

#include <fmt/format.h>

namespace undercowl::trade {
namespace {

using units::Dimension;

Outcome work(const Declaration& declaration, const Given& given) {
    double ratio = given.number("ratio");
    if (ratio < 1)
        ratio = ratio > 0 ? 1 / ratio : 0;
    if (ratio < 8 || ratio > 200)
        return given.problem("ratio", "is no mixture for a two-stroke",
                             "fuel to oil from 8 to 200, such as 50, 50:1 or 2 %");
    const bool finished = given.text("measure") == "mix";
    const double volume = given.number("fuel");
    const double oil = finished ? volume / (ratio + 1) : volume / ratio;
    Result result(declaration);
    result.say(finished
                   ? fmt::format("oil = finished mix/(ratio + 1) = {:.4g} L/({:g} + 1) = {:.4g} mL", volume,
                                 ratio, oil * 1000)
                   : fmt::format("oil = fuel/ratio = {:.4g} L/{:g} = {:.4g} mL", volume, ratio, oil * 1000));
    result.put("oil", oil * 1000);
    result.put("fuel", finished ? volume - oil : volume);
    result.put("mix", finished ? volume : volume + oil);
    return result;
}

} // namespace

Calculation premix() {
    Declaration d;
    d.name = "premix";
    d.title = "Two-stroke mixture";
    d.purpose = "How much oil goes into the fuel.";
    d.formula = {"oil = fuel/ratio; with a fixed finished volume oil = mix/(ratio + 1)"};
    d.inputs = {
        quantity("fuel", "Fuel", Dimension::Volume, "L", "petrol before the oil goes in").range(0.01, 1000),
        number("ratio", "Ratio", "fuel to oil by volume, from the manual: 50, 50:1 or 2 %"),
        choice("measure", "The volume is", {{"fuel", "fuel alone"}, {"mix", "the finished mix"}},
               "a tank filled to the mark holds finished mix")
            .withDefault("fuel")};
    d.outputs = {quantityOut("oil", "Oil", Dimension::Volume, "mL"),
                 quantityOut("fuel", "Fuel", Dimension::Volume, "L"),
                 quantityOut("mix", "Finished mix", Dimension::Volume, "L")};
    d.sources = {"ratio is fuel to oil by volume (definition)"};
    d.cautions = {"the manual's ratio and kind of oil win; too little oil seizes the engine",
                  "petrol: no flame, fresh air, a can made for it"};
    d.example = {{{"fuel", "5 L"}, {"ratio", "50"}}, {{"oil", "100"}, {"mix", "5.1"}}};
    return {d, work};
}

} // namespace undercowl::trade
