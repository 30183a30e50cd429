#include "core/trade/air.h"
#include "core/trade/calculations.h"
#include "core/trade/tyre_pressure.h"

#include <fmt/format.h>

#include <algorithm>

namespace undercowl::trade {
namespace {

using units::Dimension;

Outcome work(const Declaration& declaration, const Given& given) {
    const double ambient = standardPascals(given.in("altitude", Dimension::Length, "m")) / 1000;
    const double p1 = given.number("pressure_1");
    const double p2 = given.number("pressure_2");
    const double corrected =
        shiftedGauge(p2, ambient, given.number("temp_2"), given.number("temp_1"), ambient);
    const double loss = p1 - corrected;
    const double days = given.in("hours", Dimension::Time, "d");
    const double perDay = loss / days;
    Result result(declaration);
    result.say(fmt::format("second reading at the first temperature: ({:.4g} + {:.3f}) x {:.2f} K/{:.2f} K - "
                           "{:.3f} = {:.4f} kPa",
                           p2, ambient, given.number("temp_1") + 273.15, given.number("temp_2") + 273.15,
                           ambient, corrected));
    result.say(fmt::format("lost: {:.4f} kPa in {:.4g} days = {:.4f} kPa a day", loss, days, perDay));
    result.put("loss_per_day", perDay);
    result.put("loss", loss);
    result.put("corrected", corrected);
    if (loss <= 0)
        result.warn("no air was lost: the difference is temperature, or within what the gauge can tell");
    result.plot = Plot{units::unit(Dimension::GaugePressure, "kPa gauge"),
                       {{0, p1, "first"}, {days, corrected, "second, same temperature"}},
                       given.has("limit") ? std::optional(given.number("limit")) : std::nullopt,
                       std::nullopt,
                       {}};
    if (!given.has("limit"))
        return result;
    const double limit = given.number("limit");
    if (limit >= p1)
        return given.problem("limit", "is not below the first pressure",
                             fmt::format("below {:.4g} kPa gauge", p1));
    if (perDay > 0) {
        const double left = std::max(0.0, (corrected - limit) / perDay);
        result.say(fmt::format("from the second reading down to {:.4g} kPa: {:.4g} days", limit, left));
        result.put("days_to_limit", left);
    } else {
        result.put("days_to_limit", std::string("no loss: the limit is not reached"));
    }
    return result;
}

} // namespace

Calculation leakDown() {
    Declaration d;
    d.name = "leak-down";
    d.title = "Loss of pressure";
    d.purpose = "How fast a tyre or a crankcase loses air, with the temperature taken out.";
    d.formula = {"p2 corrected = (p2 + ambient) T1/T2 - ambient", "loss per day = (p1 - p2 corrected)/days",
                 "days to limit = (p2 corrected - limit)/loss per day"};
    d.inputs = {
        quantity("pressure_1", "First pressure", Dimension::GaugePressure, "kPa gauge",
                 "as the gauge shows it")
            .range(0, 1000),
        quantity("temp_1", "First temperature", Dimension::Temperature, "degC", "of the air inside")
            .range(-50, 120),
        quantity("pressure_2", "Second pressure", Dimension::GaugePressure, "kPa gauge",
                 "as the gauge shows it")
            .range(0, 1000),
        quantity("temp_2", "Second temperature", Dimension::Temperature, "degC", "of the air inside")
            .range(-50, 120),
        quantity("hours", "Time between", Dimension::Time, "h", "from the first to the second reading")
            .range(0.01, 100000),
        quantity("limit", "Lowest allowed", Dimension::GaugePressure, "kPa gauge",
                 "the pressure at which something has to be done")
            .optional()
            .range(0, 1000),
        quantity("altitude", "Altitude", Dimension::Length, "m", "above sea level")
            .withDefault("0")
            .range(-430, 5000)};
    d.outputs = {quantityOut("loss_per_day", "Loss per day", Dimension::PressureDifference, "kPa"),
                 quantityOut("days_to_limit", "Days to the limit", Dimension::Time, "d"),
                 quantityOut("loss", "Loss", Dimension::PressureDifference, "kPa"),
                 quantityOut("corrected", "Second reading at the first temperature", Dimension::GaugePressure,
                             "kPa gauge")};
    d.sources = {"ideal gas law at constant volume", "U.S. Standard Atmosphere 1976 (ambient pressure)"};
    d.cautions = {"a loss smaller than the gauge's error is none that was measured",
                  "a crankcase's accepted drop is the service manual's figure"};
    d.validity = {"the loss is taken as even over time; days are counted from the second reading"};
    d.example = {{{"pressure_1", "200"},
                  {"temp_1", "25"},
                  {"pressure_2", "176"},
                  {"temp_2", "8"},
                  {"hours", "12"},
                  {"limit", "150"}},
                 {{"loss", "7.2313"}, {"loss_per_day", "14.4625"}, {"days_to_limit", "2.95722"}}};
    return {d, work};
}

} // namespace undercowl::trade
