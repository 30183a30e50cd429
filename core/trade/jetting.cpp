#include "core/trade/air.h"
#include "core/trade/calculations.h"

#include <fmt/format.h>

#include <cmath>

namespace undercowl::trade {
namespace {

using units::Dimension;

Outcome work(const Declaration& declaration, const Given& given) {
    const double before = dryDensity(standardPascals(given.in("altitude_from", Dimension::Length, "m")),
                                     given.number("temp_from"));
    const double after =
        dryDensity(standardPascals(given.in("altitude_to", Dimension::Length, "m")), given.number("temp_to"));
    const double ratio = after / before;
    const bool diameter = given.text("numbered") == "diameter";
    const double jet = given.number("jet") * std::pow(ratio, diameter ? 0.25 : 0.5);
    Result result(declaration);
    result.say(
        fmt::format("air before {:.5f} kg/m3, after {:.5f} kg/m3: ratio {:.6f}", before, after, ratio));
    result.say(fmt::format("jet = {:g} x ratio^{} = {:.3f}", given.number("jet"),
                           diameter ? "(1/4)" : "(1/2)", jet));
    result.put("jet", jet);
    result.put("density_ratio", ratio, 6);
    result.put(
        "assumption",
        std::string(diameter ? "jets numbered by diameter: jet area goes with the root of the density ratio, "
                               "so the diameter with its fourth root"
                             : "jets numbered by flow: the number goes with the root of the density ratio"));
    return result;
}

} // namespace

Calculation jetting() {
    Declaration d;
    d.name = "jetting";
    d.title = "Main jet in other air";
    d.purpose = "A starting point for the main jet at another height or temperature.";
    d.formula = {"density ratio s = density there/density here (standard pressure, dry air)",
                 "numbered by diameter: jet x s^(1/4); by flow: jet x s^(1/2)"};
    d.inputs = {number("jet", "Jet now", "the number stamped on it").range(10, 500),
                quantity("altitude_from", "Altitude now", Dimension::Length, "m", "where the jet is right")
                    .range(-430, 5000),
                quantity("altitude_to", "Altitude there", Dimension::Length, "m", "where it will run")
                    .range(-430, 5000),
                quantity("temp_from", "Temperature now", Dimension::Temperature, "degC", "of the air")
                    .withDefault("15")
                    .range(-40, 60),
                quantity("temp_to", "Temperature there", Dimension::Temperature, "degC", "of the air")
                    .withDefault("15")
                    .range(-40, 60),
                choice("numbered", "Numbered by",
                       {{"diameter", "bore in hundredths of a millimetre"}, {"flow", "flow"}},
                       "how the carburettor's maker numbers jets")
                    .withDefault("diameter")};
    d.outputs = {numberOut("jet", "Jet"), numberOut("density_ratio", "Density ratio"),
                 textOut("assumption", "Assumption")};
    d.sources = {"derived from the orifice equation; same law as in aircraft-carburettor density analysis "
                 "(NACA TN 1874)",
                 "U.S. Standard Atmosphere 1976"};
    d.cautions = {"a starting point only: final jetting is by plug reading and the manual; a weak mixture "
                  "seizes a two-stroke",
                  "air bleeds, needle circuit and fuel change the result (common practice, no source)"};
    d.validity = {"venturi carburettor, same engine speed and throttle, same fuel"};
    d.example = {{{"jet", "100"},
                  {"altitude_from", "0"},
                  {"altitude_to", "1000"},
                  {"temp_from", "15"},
                  {"temp_to", "8.5"}},
                 {{"jet", "97.602"}, {"density_ratio", "0.907463"}}};
    return {d, work};
}

} // namespace undercowl::trade
