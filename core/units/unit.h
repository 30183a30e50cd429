// Units of measure: one table, made of exact factors that follow from definitions.
#pragma once

#include "core/units/dimension.h"
#include "core/units/rational.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::units {

// How a value in the unit becomes a value in the dimension's base unit.
enum class Law : std::uint8_t {
    Linear,     // base = (value - zero) x factor
    Reciprocal, // base = factor / value (miles per gallon to litres per 100 km)
    Gauge,      // American wire gauge number to cross-section (ASTM B258)
};

// One row of the table. Lives as long as the program.
struct UnitEntry {
    Dimension dimension = Dimension::Number;
    std::string symbol;               // canonical: "lbf.ft"; what is stored and shown
    std::string name;                 // "pound-force foot"
    std::vector<std::string> aliases; // other ways in which people write it
    Rational factor{1};
    Rational zero{0}; // the value in this unit at which the base unit shows 0; only temperatures have one
    Law law = Law::Linear;
    bool irrational = false; // factor is only a part of it: angles in radians are multiplied by 1/pi as well
    std::string source;
};

// A unit by value: cheap to copy, equal when it is the same row. The default is the plain number 1.
class Unit {
public:
    Unit();
    explicit Unit(const UnitEntry& entry) : entry_(&entry) {}

    [[nodiscard]] Dimension dimension() const { return entry_->dimension; }
    [[nodiscard]] const std::string& symbol() const { return entry_->symbol; }
    [[nodiscard]] const std::string& name() const { return entry_->name; }
    [[nodiscard]] const UnitEntry& entry() const { return *entry_; }

    friend bool operator==(Unit a, Unit b) { return a.entry_ == b.entry_; }

private:
    const UnitEntry* entry_;
};

// All units of a dimension, base unit first.
[[nodiscard]] const std::vector<Unit>& unitsOf(Dimension dimension);

// The unit in which a dimension's conversions meet: N.m, kPa, mm, mm2, mL, kg, kg/m3, km/h, rpm, W, L/100km,
// degC, K, s, deg, V, A, ohm, Ah, J, N, MPa, 1.
[[nodiscard]] Unit baseUnit(Dimension dimension);

// The unit that a person means by TEXT in a dimension: canonical symbols and the usual spellings ("ft-lb",
// "Nm", "kg/cm2"), with or without spaces, middle dots, superscripts. Letter case is ignored unless it
// changes the meaning (mohm, Mohm). Nothing if no unit of that dimension is written so.
[[nodiscard]] std::optional<Unit> findUnit(std::string_view text, Dimension dimension);

// The units of any dimension that are written so; "kPa" is three (difference, gauge, absolute).
[[nodiscard]] std::vector<Unit> findUnits(std::string_view text);

// For code that names a unit which the table is known to hold: unit(Dimension::Torque, "N.m"). An unknown
// symbol is a mistake of the programmer and ends the program.
[[nodiscard]] Unit unit(Dimension dimension, std::string_view symbol);

// "N.m, lbf.ft, lbf.in": the symbols that fit, for messages and forms.
[[nodiscard]] std::string symbolsOf(Dimension dimension);

// Why a written unit is not taken although it looks right: "gal" may be US or imperial. Nothing if TEXT is no
// such trap.
[[nodiscard]] std::optional<std::string> knownAmbiguity(std::string_view text);

} // namespace undercowl::units
