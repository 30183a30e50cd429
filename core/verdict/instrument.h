// The shop's measuring instruments and what they may be off by.
#pragma once

#include "core/units/date.h"
#include "core/units/quantity.h"
#include "core/verdict/budget.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <tl/expected.hpp>
#include <vector>

namespace undercowl::verdict {

enum class InstrumentKind : std::uint8_t {
    TorqueWrench,
    PressureGauge,
    Multimeter,
    Caliper,
    FeelerGauge,
    Hydrometer,
    Thermometer,
    Other,
};

[[nodiscard]] std::string_view code(InstrumentKind kind); // "torque-wrench"; stable, for storing
[[nodiscard]] std::string_view englishName(InstrumentKind kind);
[[nodiscard]] std::optional<InstrumentKind> instrumentKind(std::string_view code);

// The largest permitted error: the parts add up. All are half-widths and not negative.
struct ErrorLimit {
    double percentOfReading{};
    double percentOfRange{}; // of rangeHigh: the class of a pressure gauge
    double digits{};         // counts of the last digit: "0.5 % + 2 digits"
    double absolute{};       // in the instrument's unit
};

struct Instrument {
    std::string name; // as the shop calls it
    InstrumentKind kind = InstrumentKind::Other;
    units::Unit unit;    // of range, resolution and absolute error
    double rangeLow{};   // below it readings are refused
    double rangeHigh{};  // above it as well
    double resolution{}; // one division or the last digit; must be above zero
    ErrorLimit limit;
    std::string limitSource; // "ISO 6789-1 type II class A", "maker's sheet", "memory"
    // Half of what two people would read differently (a feeler gauge's drag); triangular.
    double feel{};
    std::optional<units::Date> calibrated;
    std::optional<units::Date> due;
};

// Setting tools of ISO 6789-1:2017: a wrench's permitted deviation follows from type, class and its largest
// torque. Type I class A to E, type II class A to G. Type II class A is read in published quotations, the
// others are from memory: limitSource says so. The error names a letter that the type has not, or a range
// that is none.
enum class WrenchType : std::uint8_t { Indicating, Setting };
[[nodiscard]] tl::expected<Instrument, std::string> torqueWrench(std::string name, WrenchType type,
                                                                 char letter, double low, double high,
                                                                 units::Unit unit, double resolution);
// Permitted deviation in per cent of the reading. Nothing for a letter that the type has not.
[[nodiscard]] std::optional<double> wrenchDeviation(WrenchType type, char letter, double maximumNewtonMetres);

// How a wrench is prepared and tested, ISO 6789:2003 and ISO 6789-1:2017 clause 5.1.3: a setting tool is
// worked so often at its largest torque, in each direction, then read at these shares of it. A tool with
// marks above the first share starts at its lowest mark instead.
inline constexpr int wrenchExercises = 5;
inline constexpr std::array wrenchTestPercents{20, 60, 100};
// The same as advice: "before it is tested ...". Empty for other kinds.
[[nodiscard]] std::string testAdvice(InstrumentKind kind);

// A gauge of accuracy class 1.6 is off by at most 1.6 % of its full scale (EN 837-1).
[[nodiscard]] Instrument pressureGauge(std::string name, double classPercent, double fullScale,
                                       units::Unit unit, double resolution);

// What an instrument lacks before it can be used: name, range, resolution, some error. Empty if it is
// complete.
[[nodiscard]] std::vector<std::string> whatIsMissing(const Instrument& instrument);

// Uncertainty of one reading. Refused, naming range and remedy: a reading of another dimension or outside the
// range, an instrument that is not complete.
[[nodiscard]] tl::expected<Budget, std::string> budgetFor(const Instrument& instrument,
                                                          const units::Quantity& reading);

// What a reading may be off by when nobody named the instrument: as much as with the worst of the ordinary
// instruments that read it; 10 % of it, k = 2, where none of them does (chosen wide, no source). Enough to
// say that a value is wrong, never that it is right.
[[nodiscard]] Budget assumedBudget(const units::Quantity& reading);

// What to say beside the verdict: calibration overdue or never recorded. Empty if all is well.
[[nodiscard]] std::optional<std::string> calibrationCaution(const Instrument& instrument, units::Date today);

// Ordinary instruments to start from, each marked as an assumption: a shop replaces them by its own. Found by
// name: "torque-wrench-25", "torque-wrench-100", "tyre-gauge", "multimeter", "caliper", "feeler-gauge",
// "hydrometer", "thermometer", "depth-gauge", "micrometer".
[[nodiscard]] const std::vector<Instrument>& ordinaryInstruments();
[[nodiscard]] const Instrument* ordinaryInstrument(std::string_view name, units::Dimension dimension);

} // namespace undercowl::verdict
