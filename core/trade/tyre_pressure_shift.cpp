#include "core/trade/air.h"
#include "core/trade/calculations.h"
#include "core/trade/tyre_pressure.h"

#include <fmt/format.h>

namespace undercowl::trade {
namespace {

using units::Dimension;

Outcome work(const Declaration& declaration, const Given& given) {
    const double altitude1 = given.in("altitude_from", Dimension::Length, "m");
    const double altitude2 = given.in("altitude_to", Dimension::Length, "m");
    const double ambient1 = standardPascals(altitude1) / 1000;
    const double ambient2 = standardPascals(altitude2) / 1000;
    const double p1 = given.number("pressure");
    const double t1 = given.number("temp_from");
    const double t2 = given.number("temp_to");
    const double p2 = shiftedGauge(p1, ambient1, t1, t2, ambient2);
    Result result(declaration);
    result.say(fmt::format("absolute before: {:.4g} + {:.4f} = {:.4f} kPa", p1, ambient1, p1 + ambient1));
    result.say(fmt::format("absolute after: x ({:.2f} K / {:.2f} K) = {:.4f} kPa", t2 + 273.15, t1 + 273.15,
                           p2 + ambient2));
    result.say(fmt::format("gauge after: less ambient {:.4f} kPa = {:.4f} kPa", ambient2, p2));
    if (p2 < 0)
        return given.problem("pressure", "would end below the ambient pressure: the tyre is flat there",
                             "a higher pressure at the start");
    result.put("pressure", p2);
    return result;
}

} // namespace

double shiftedGauge(double gauge, double ambient1, double celsius1, double celsius2, double ambient2) {
    return (gauge + ambient1) * (celsius2 + 273.15) / (celsius1 + 273.15) - ambient2;
}

Calculation tyrePressureShift() {
    Declaration d;
    d.name = "tyre-pressure-shift";
    d.title = "Tyre pressure in other weather or height";
    d.purpose = "What a gauge will show when the tyre is warmer, colder, higher or lower.";
    d.formula = {"p2 = (p1 + ambient1) T2/T1 - ambient2, temperatures in kelvin",
                 "ambient = 101.325 (1 - 0.0065 h/288.15)^5.25588 kPa"};
    d.inputs = {
        quantity("pressure", "Pressure", Dimension::GaugePressure, "kPa gauge", "as the gauge shows it")
            .range(0, 1000),
        quantity("temp_from", "Temperature then", Dimension::Temperature, "degC",
                 "of the air in the tyre at that reading")
            .range(-50, 120),
        quantity("temp_to", "Temperature now", Dimension::Temperature, "degC", "of the air in the tyre now")
            .range(-50, 120),
        quantity("altitude_from", "Altitude then", Dimension::Length, "m", "above sea level")
            .withDefault("0")
            .range(-430, 5000),
        quantity("altitude_to", "Altitude now", Dimension::Length, "m", "above sea level")
            .withDefault("0")
            .range(-430, 5000)};
    d.outputs = {quantityOut("pressure", "Pressure", Dimension::GaugePressure, "kPa gauge")};
    d.sources = {"ideal gas law at constant volume", "U.S. Standard Atmosphere 1976 (ambient pressure)"};
    d.cautions = {"a tyre stretches a little: the real change is slightly smaller",
                  "never bleed a hot tyre down to its cold pressure"};
    d.validity = {"closed tyre, dry air, weather as in the standard atmosphere"};
    d.example = {{{"pressure", "200 kPa"}, {"temp_from", "20"}, {"temp_to", "0"}},
                 {{"pressure", "179.4423"}}};
    return {d, work};
}

} // namespace undercowl::trade
