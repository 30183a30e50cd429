#include "core/verdict/instrument.h"

#include "core/units/format.h"

#include <array>
#include <cmath>

namespace undercowl::verdict {
namespace {

using units::Dimension;
using units::format;
using units::formatSignificant;
using units::Quantity;

struct KindName {
    InstrumentKind kind;
    std::string_view code;
    std::string_view english;
};

constexpr std::array kindNames{
    KindName{InstrumentKind::TorqueWrench, "torque-wrench", "torque wrench"},
    KindName{InstrumentKind::PressureGauge, "pressure-gauge", "pressure gauge"},
    KindName{InstrumentKind::Multimeter, "multimeter", "multimeter"},
    KindName{InstrumentKind::Caliper, "caliper", "caliper"},
    KindName{InstrumentKind::FeelerGauge, "feeler-gauge", "feeler gauge"},
    KindName{InstrumentKind::Hydrometer, "hydrometer", "hydrometer"},
    KindName{InstrumentKind::Thermometer, "thermometer", "thermometer"},
    KindName{InstrumentKind::Other, "other", "other instrument"},
};

} // namespace

std::string_view code(InstrumentKind kind) {
    return kindNames.at(static_cast<std::size_t>(kind)).code;
}

std::string_view englishName(InstrumentKind kind) {
    return kindNames.at(static_cast<std::size_t>(kind)).english;
}

std::optional<InstrumentKind> instrumentKind(std::string_view text) {
    for (const KindName& name : kindNames)
        if (name.code == text)
            return name.kind;
    return std::nullopt;
}

std::optional<double> wrenchDeviation(WrenchType type, char letter, double maximumNewtonMetres) {
    // ISO 6789-1:2017: bending bars and screwdrivers with a scale 6 %, the others 4 % above 10 N.m of tool
    // maximum.
    const std::string_view letters = type == WrenchType::Indicating ? "ABCDE" : "ABCDEFG";
    const std::string_view sixPercent = type == WrenchType::Indicating ? "AD" : "DEFG";
    if (letters.find(letter) == std::string_view::npos)
        return std::nullopt;
    return maximumNewtonMetres <= 10 || sixPercent.find(letter) != std::string_view::npos ? 6.0 : 4.0;
}

tl::expected<Instrument, std::string> torqueWrench(std::string name, WrenchType type, char letter, double low,
                                                   double high, units::Unit unit, double resolution) {
    if (unit.dimension() != Dimension::Torque)
        return tl::unexpected("a torque wrench reads torque, not " + unit.symbol());
    const bool indicating = type == WrenchType::Indicating;
    const auto deviation = wrenchDeviation(type, letter, Quantity{high, unit}.base());
    if (!deviation) {
        std::string reason = "class ";
        reason += letter;
        reason += " does not exist: type I has A to E, type II A to G";
        return tl::unexpected(reason);
    }
    Instrument wrench;
    wrench.name = std::move(name);
    wrench.kind = InstrumentKind::TorqueWrench;
    wrench.unit = unit;
    wrench.rangeLow = low;
    wrench.rangeHigh = high;
    wrench.resolution = resolution;
    wrench.limit.percentOfReading = *deviation;
    wrench.limitSource = std::string("ISO 6789-1 type ") + (indicating ? "I" : "II") + " class " + letter;
    if (indicating || letter != 'A')
        wrench.limitSource += " (from memory: look at the certificate)";
    if (const auto missing = whatIsMissing(wrench); !missing.empty())
        return tl::unexpected(missing.front());
    return wrench;
}

std::string testAdvice(InstrumentKind kind) {
    if (kind != InstrumentKind::TorqueWrench)
        return {};
    std::string shares;
    for (const int percent : wrenchTestPercents)
        shares += (shares.empty()                         ? ""
                   : percent == wrenchTestPercents.back() ? " and "
                                                          : ", ") +
                  std::to_string(percent);
    return "tested by ISO 6789: worked " + std::to_string(wrenchExercises) +
           " times at its largest torque, then read at " + shares + " % of it";
}

Instrument pressureGauge(std::string name, double classPercent, double fullScale, units::Unit unit,
                         double resolution) {
    Instrument gauge;
    gauge.name = std::move(name);
    gauge.kind = InstrumentKind::PressureGauge;
    gauge.unit = unit;
    gauge.rangeHigh = fullScale;
    gauge.resolution = resolution;
    gauge.limit.percentOfRange = classPercent;
    gauge.limitSource = "EN 837-1 class " + formatSignificant(classPercent);
    return gauge;
}

std::vector<std::string> whatIsMissing(const Instrument& instrument) {
    std::vector<std::string> missing;
    const ErrorLimit& limit = instrument.limit;
    if (instrument.name.empty())
        missing.emplace_back("name: give the instrument one, as the shop calls it");
    if (!(instrument.rangeHigh > instrument.rangeLow))
        missing.emplace_back("range: the upper end must be above the lower one");
    if (!(instrument.resolution > 0))
        missing.emplace_back("resolution: give one division, or the last digit of the display");
    if (!(limit.percentOfReading >= 0 && limit.percentOfRange >= 0 && limit.digits >= 0 &&
          limit.absolute >= 0 && instrument.feel >= 0))
        missing.emplace_back("limit of error: its parts must not be negative");
    else if (limit.percentOfReading + limit.percentOfRange + limit.digits + limit.absolute == 0)
        missing.emplace_back("limit of error: give it from the maker's sheet; it is never zero");
    return missing;
}

tl::expected<Budget, std::string> budgetFor(const Instrument& instrument, const Quantity& reading) {
    if (const auto missing = whatIsMissing(instrument); !missing.empty())
        return tl::unexpected(instrument.name + ": " + missing.front());
    const auto same = units::convert(reading, instrument.unit);
    if (!same)
        return tl::unexpected(instrument.name + " reads " + instrument.unit.symbol() + ": " +
                              same.error().message);
    const double value = same->value;
    if (value < instrument.rangeLow || value > instrument.rangeHigh)
        return tl::unexpected(instrument.name + " reads from " + formatSignificant(instrument.rangeLow) +
                              " to " + format({instrument.rangeHigh, instrument.unit}) + ", not " +
                              format(*same) + ": use another instrument");
    const Dimension interval = units::intervalOf(reading.unit.dimension());
    const units::Unit base = units::baseUnit(interval);
    // All lines in the base unit of the interval, whose size is that of the reading's own base unit.
    const auto inBase = [&](double width) {
        return Quantity{value + width, instrument.unit}.base() - Quantity{value, instrument.unit}.base();
    };
    Budget budget{base, {}};
    const auto add = [&](std::string what, double width, Distribution distribution) {
        if (width > 0)
            budget.lines.push_back({std::move(what), std::fabs(inBase(width)), distribution});
    };
    const ErrorLimit& limit = instrument.limit;
    const std::string of = " (" + instrument.limitSource + ")";
    add("limit of error, " + formatSignificant(limit.percentOfReading) + " % of the reading" + of,
        limit.percentOfReading / 100 * std::fabs(value), Distribution::Rectangular);
    add("limit of error, " + formatSignificant(limit.percentOfRange) + " % of full scale" + of,
        limit.percentOfRange / 100 * instrument.rangeHigh, Distribution::Rectangular);
    add("limit of error, " + formatSignificant(limit.digits) + " digits" + of,
        limit.digits * instrument.resolution, Distribution::Rectangular);
    add("limit of error" + of, limit.absolute, Distribution::Rectangular);
    add("resolution, half a division", instrument.resolution / 2, Distribution::Rectangular);
    add("feel of the hand", instrument.feel, Distribution::Triangular);
    return budget;
}

Budget assumedBudget(const Quantity& reading) {
    std::optional<Budget> worst;
    for (const Instrument& instrument : ordinaryInstruments())
        if (instrument.unit.dimension() == reading.unit.dimension())
            if (auto budget = budgetFor(instrument, reading);
                budget && (!worst || budget->combined() > worst->combined()))
                worst = *std::move(budget);
    if (worst)
        return *std::move(worst);
    constexpr double share = 0.1;
    const units::Unit base = units::baseUnit(units::intervalOf(reading.unit.dimension()));
    const double width = share * std::fabs(reading.base());
    return {base, {{"no instrument was named: 10 % of the reading, k = 2", width, Distribution::Normal}}};
}

std::optional<std::string> calibrationCaution(const Instrument& instrument, units::Date today) {
    if (instrument.due && units::daysBetween(*instrument.due, today) > 0)
        return instrument.name + ": calibration was due on " + units::formatDate(*instrument.due) +
               "; its limit of error can no longer be relied on";
    if (!instrument.calibrated)
        return instrument.name + ": no calibration is recorded";
    return std::nullopt;
}

} // namespace undercowl::verdict
