#include "core/trade/air.h"
#include "core/trade/calculations.h"

#include <fmt/format.h>

namespace undercowl::trade {
namespace {

using units::Dimension;

Outcome work(const Declaration& declaration, const Given& given) {
    Result result(declaration);
    const double altitude = given.in("altitude", Dimension::Length, "m");
    const double celsius = given.number("temp");
    const double pascals = given.has("pressure")
                               ? given.in("pressure", Dimension::AbsolutePressure, "Pa absolute")
                               : standardPascals(altitude);
    result.say(given.has("pressure")
                   ? fmt::format("pressure as given: {:.0f} Pa absolute", pascals)
                   : fmt::format("standard pressure at {:g} m: {:.1f} Pa", altitude, pascals));
    double density = dryDensity(pascals, celsius);
    double vapour = 0;
    if (given.has("humidity")) {
        const double humidity = given.in("humidity", Dimension::Number, "1");
        const HumidAir air = humidAir(pascals, celsius, humidity);
        density = air.density;
        vapour = humidity * magnusPascals(celsius);
        if (vapour >= pascals)
            return given.problem("humidity", "would be more vapour than the whole pressure",
                                 "a higher pressure or a lower temperature");
        result.say(fmt::format(
            "humid air, CIPM-2007: saturation {:.1f} Pa, vapour share {:.6f}, Z {:.6f}: {:.5f} kg/m3",
            air.saturationPascals, air.vapourShare, air.compressibility, density));
        if (celsius < 15 || celsius > 27 || pascals < 60000 || pascals > 110000)
            result.warn("outside 15 to 27 degC or 600 to 1100 hPa the CIPM-2007 formula is extrapolated");
    } else {
        result.say(fmt::format("dry air: p/(R T) = {:.0f} Pa/(287.053 J/(kg K) x {:.2f} K) = {:.5f} kg/m3",
                               pascals, celsius + 273.15, density));
    }
    result.put("density", density, 5);
    result.put("density_ratio", density / seaLevelDensity, 5);
    result.put("density_altitude", densityAltitude(density));
    const double correction = powerCorrection((pascals - vapour) / 1000, celsius);
    result.say(
        fmt::format("SAE J1349 (June 1990): 1.180 x (99/{:.3f}) x sqrt(({:g} + 273)/298) - 0.180 = {:.5f}",
                    (pascals - vapour) / 1000, celsius, correction));
    result.put("power_correction", correction, 5);
    return result;
}

} // namespace

Calculation airDensity() {
    Declaration d;
    d.name = "air-density";
    d.title = "Density of the air";
    d.purpose = "How much air there is for the engine to breathe.";
    d.formula = {"dry: p/(R T)", "humid: CIPM-2007, 3.483740e-3 p/(Z T) (1 - 0.3780 xv)",
                 "ratio to 1.225 kg/m3; density altitude where standard air is as thin"};
    d.inputs = {quantity("altitude", "Altitude", Dimension::Length, "m",
                         "above sea level; the standard pressure there is used")
                    .withDefault("0")
                    .range(-430, 5000),
                quantity("temp", "Temperature", Dimension::Temperature, "degC", "of the air").range(-40, 60),
                quantity("pressure", "Pressure", Dimension::AbsolutePressure, "hPa absolute",
                         "of a barometer at the place, not reduced to sea level; replaces the altitude")
                    .optional()
                    .range(500, 1100),
                quantity("humidity", "Relative humidity", Dimension::Number, "percent", "dry air without it")
                    .optional()
                    .range(0, 100)};
    d.outputs = {quantityOut("density", "Density", Dimension::Density, "kg/m3"),
                 numberOut("density_ratio", "Ratio to standard air"),
                 quantityOut("density_altitude", "Density altitude", Dimension::Length, "m"),
                 numberOut("power_correction", "Power correction SAE J1349")};
    d.sources = {"U.S. Standard Atmosphere 1976", "CIPM-2007 (Picard, Davis, Glaeser & Fujii 2008)",
                 "WMO-No. 8 Magnus form (dry pressure)", "SAE J1349 JUN90 form"};
    d.cautions = {"the power correction is for four-stroke petrol engines without supercharger"};
    d.validity = {"altitude as in the standard atmosphere; CIPM-2007 for 15 to 27 degC and 600 to 1100 hPa; "
                  "dry and humid formula differ by 0.04 % at no humidity"};
    d.example = {{{"altitude", "1000 m"}, {"temp", "8.5 degC"}},
                 {{"density", "1.11164"}, {"density_ratio", "0.907463"}, {"density_altitude", "1000"}}};
    return {d, work};
}

} // namespace undercowl::trade
