#include "core/verdict/specify.h"

#include "core/units/format.h"
#include "core/units/parse.h"

#include <array>
#include <cmath>
#include <optional>

namespace undercowl::verdict {
namespace {

using units::Dimension;

template<typename T>
using Read = tl::expected<T, SheetProblem>;

tl::unexpected<SheetProblem> wrong(const char* field, std::string message) {
    return tl::unexpected(SheetProblem{field, std::move(message)});
}

// What an instrument of the kind measures, most likely first: a plain "psi" on a gauge is gauge pressure.
std::vector<Dimension> measures(InstrumentKind kind) {
    switch (kind) {
    case InstrumentKind::TorqueWrench: return {Dimension::Torque};
    case InstrumentKind::PressureGauge: return {Dimension::GaugePressure, Dimension::AbsolutePressure};
    case InstrumentKind::Multimeter: return {Dimension::Voltage, Dimension::Current, Dimension::Resistance};
    case InstrumentKind::Caliper:
    case InstrumentKind::FeelerGauge: return {Dimension::Length};
    case InstrumentKind::Hydrometer: return {Dimension::Number};
    case InstrumentKind::Thermometer: return {Dimension::Temperature};
    case InstrumentKind::Other: break;
    }
    std::vector<Dimension> all{Dimension::GaugePressure};
    for (int index = 0; index < units::dimensionCount; ++index)
        if (static_cast<Dimension>(index) != Dimension::GaugePressure)
            all.push_back(static_cast<Dimension>(index));
    return all;
}

Read<units::Quantity> largest(const InstrumentSheet& sheet, InstrumentKind kind) {
    std::string first;
    for (const Dimension dimension : measures(kind)) {
        // A hydrometer's readings are plain numbers.
        const auto fallback = dimension == Dimension::Number && kind == InstrumentKind::Hydrometer
                                  ? std::optional(units::baseUnit(dimension))
                                  : std::nullopt;
        const auto read = units::parseQuantity(sheet.high, dimension, fallback);
        if (read)
            return read->quantity();
        if (first.empty())
            first = read.error().message;
    }
    return wrong("high", "largest reading: " + first);
}

// A width in the instrument's own unit: of degF a step is given in kelvins or degF.
Read<double> width(const char* field, const std::string& text, const units::Unit& unit) {
    if (text.empty())
        return 0.0;
    if (const auto plain = units::parseNumber(text); plain)
        return plain->value;
    const auto read = units::parseQuantity(text, units::intervalOf(unit.dimension()));
    if (!read)
        return wrong(field, read.error().message);
    const double one = units::Quantity{1, unit}.base() - units::Quantity{0, unit}.base();
    return read->quantity().base() / one;
}

Read<double> plain(const char* field, const std::string& text) {
    if (text.empty())
        return 0.0;
    const auto read = units::parseNumber(text);
    if (!read)
        return wrong(field, read.error().message);
    return read->value;
}

Read<std::optional<units::Date>> day(const char* field, const std::string& text) {
    if (text.empty())
        return std::optional<units::Date>();
    const auto read = units::parseDate(text);
    if (!read)
        return wrong(field, "\"" + text + "\" is no date: write year, month and day such as 2026-11-25");
    return std::optional<units::Date>(*read);
}

const char* fieldOf(const std::string& missing) {
    for (const auto& [begins, field] :
         {std::pair{"name", "name"}, {"range", "high"}, {"resolution", "resolution"}})
        if (missing.starts_with(begins))
            return field;
    return "error";
}

constexpr std::string_view standardSource = "ISO 6789-1 type ";

// "II A", "II a", "type II class A".
Read<Instrument> byStandard(const InstrumentSheet& sheet, Instrument instrument) {
    std::string letters;
    for (const char c : sheet.wrench)
        if ((c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'))
            letters += static_cast<char>(c & ~0x20);
        else
            letters += ' ';
    for (const char* word : {"TYPE", "CLASS"})
        if (const auto at = letters.find(word); at != std::string::npos)
            letters.erase(at, std::string(word).size());
    std::erase(letters, ' ');
    const bool setting = letters.starts_with("II");
    if (letters.size() != (setting ? 3U : 2U) || !letters.starts_with('I'))
        return wrong("wrench", "\"" + sheet.wrench +
                                   "\" is no type and class of ISO 6789-1: write I A to I E for one that "
                                   "shows the torque, II A to II G for one that is set");
    auto made =
        torqueWrench(instrument.name, setting ? WrenchType::Setting : WrenchType::Indicating, letters.back(),
                     instrument.rangeLow, instrument.rangeHigh, instrument.unit, instrument.resolution);
    if (!made)
        return wrong(made.error().starts_with("class") ? "wrench" : fieldOf(made.error()), made.error());
    return *std::move(made);
}

} // namespace

tl::expected<Instrument, SheetProblem> instrumentFrom(const InstrumentSheet& sheet) {
    const auto kind = instrumentKind(sheet.kind);
    if (!kind) {
        std::string all;
        for (int i = 0; i <= static_cast<int>(InstrumentKind::Other); ++i)
            all.append(i == 0 ? "" : ", ").append(code(static_cast<InstrumentKind>(i)));
        return wrong("kind", "\"" + sheet.kind + "\" is no kind of instrument: there are " + all);
    }
    const auto high = largest(sheet, *kind);
    if (!high)
        return tl::unexpected(high.error());
    Instrument made;
    made.name = sheet.name;
    made.kind = *kind;
    made.unit = high->unit;
    made.rangeHigh = high->value;
    if (!sheet.low.empty()) {
        const auto low = units::parseQuantity(sheet.low, made.unit.dimension(), made.unit);
        if (!low)
            return wrong("low", low.error().message);
        made.rangeLow = low->quantity().in(made.unit);
    }
    struct Field {
        const char* name;
        const std::string& text;
        double& into;
        bool hasUnit;
    };
    for (const Field& field :
         {Field{"resolution", sheet.resolution, made.resolution, true},
          Field{"error", sheet.error, made.limit.absolute, true}, Field{"feel", sheet.feel, made.feel, true},
          Field{"percent", sheet.percent, made.limit.percentOfReading, false},
          Field{"digits", sheet.digits, made.limit.digits, false},
          Field{"gaugeClass", sheet.gaugeClass, made.limit.percentOfRange, false}}) {
        const auto read =
            field.hasUnit ? width(field.name, field.text, made.unit) : plain(field.name, field.text);
        if (!read)
            return tl::unexpected(read.error());
        if (*read < 0)
            return wrong(field.name, "must not be negative, given was \"" + field.text + "\"");
        field.into = *read;
    }
    made.limitSource = !sheet.source.empty()       ? sheet.source
                       : !sheet.gaugeClass.empty() ? "EN 837-1 class " + sheet.gaugeClass
                                                   : "as the shop entered it";
    if (!sheet.wrench.empty()) {
        if (*kind != InstrumentKind::TorqueWrench)
            return wrong("wrench", "is for torque wrenches alone: leave it empty");
        auto standard = byStandard(sheet, made);
        if (!standard)
            return standard;
        standard->feel = made.feel; // what the standard does not know of
        made = *std::move(standard);
    }
    if (const auto missing = whatIsMissing(made); !missing.empty())
        return wrong(fieldOf(missing.front()), missing.front());
    const auto calibrated = day("calibrated", sheet.calibrated);
    if (!calibrated)
        return tl::unexpected(calibrated.error());
    const auto due = day("due", sheet.due);
    if (!due)
        return tl::unexpected(due.error());
    made.calibrated = *calibrated;
    made.due = *due;
    if (made.calibrated && made.due && units::daysBetween(*made.calibrated, *made.due) <= 0)
        return wrong("due", "must be after the day of calibration");
    return made;
}

InstrumentSheet sheetOf(const Instrument& instrument) {
    InstrumentSheet sheet;
    const auto number = [](double value) { return value == 0 ? std::string() : units::formatExact(value); };
    sheet.name = instrument.name;
    sheet.kind = code(instrument.kind);
    sheet.low = number(instrument.rangeLow);
    sheet.high = units::withSymbol(units::formatExact(instrument.rangeHigh), instrument.unit);
    sheet.resolution = number(instrument.resolution);
    sheet.feel = number(instrument.feel);
    if (instrument.calibrated)
        sheet.calibrated = units::formatDate(*instrument.calibrated);
    if (instrument.due)
        sheet.due = units::formatDate(*instrument.due);
    if (instrument.kind == InstrumentKind::TorqueWrench &&
        instrument.limitSource.starts_with(standardSource)) {
        // "ISO 6789-1 type II class A", perhaps with a remark behind it.
        std::string words = instrument.limitSource.substr(standardSource.size());
        const auto type = words.substr(0, words.find(' '));
        const auto letter = words.find("class ");
        if (letter != std::string::npos && letter + 6 < words.size()) {
            sheet.wrench = type + ' ' + words[letter + 6];
            return sheet;
        }
    }
    sheet.gaugeClass = number(instrument.limit.percentOfRange);
    sheet.percent = number(instrument.limit.percentOfReading);
    sheet.digits = number(instrument.limit.digits);
    sheet.error = number(instrument.limit.absolute);
    sheet.source = instrument.limitSource;
    return sheet;
}

std::string errorText(const Instrument& instrument) {
    const ErrorLimit& limit = instrument.limit;
    std::string text;
    const auto add = [&text](const std::string& part) { text += (text.empty() ? "" : " + ") + part; };
    if (limit.percentOfReading > 0)
        add(units::formatSignificant(limit.percentOfReading) + " % of the reading");
    if (limit.percentOfRange > 0)
        add(units::formatSignificant(limit.percentOfRange) + " % of full scale");
    if (limit.digits > 0)
        add(units::formatSignificant(limit.digits) + " digits");
    if (limit.absolute > 0)
        add(units::format({limit.absolute, instrument.unit}));
    return text;
}

} // namespace undercowl::verdict
