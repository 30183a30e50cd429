// Reading quantities as people write them: "25 lbf.ft", "2,4 bar", "34psi", "1/2 in", "-5 C".
#pragma once

#include "core/units/quantity.h"

#include <optional>
#include <string>
#include <string_view>

namespace undercowl::units {

// What a comma between digits may mean.
enum class Comma {
    MayGroup, // typed on a keyboard or pasted: "1,500" could be 1500, so it is refused
    Decimal,  // from our own keypad, whose only separator is the decimal one: "1,500" is 1.5
};

// A number as it was typed. The digits are kept: they say how finely it was read.
struct Typed {
    std::string text; // digits as typed, blanks trimmed
    double value = 0;
    double step = 0; // value of the last digit: 0.1 for "2,4"; of the denominator for "1/2"
};

// Point and comma are both decimal; there are no grouping separators. "1/2" and "1 1/2" are fractions,
// "35/35" is none; "1e-3" is read. Refused, with the remedy: two kinds of separator, a repeated one, a comma
// before exactly three digits (unless before it stands a plain 0), apostrophes and blanks inside a number,
// anything that is not finite.
[[nodiscard]] tl::expected<Typed, UnitError> parseNumber(std::string_view text,
                                                         Comma comma = Comma::MayGroup);

// A quantity as it was typed: what is stored and shown again is exactly this.
struct AsTyped {
    Typed number;
    Unit unit;
    [[nodiscard]] Quantity quantity() const { return {number.value, unit}; }
    // "2,4 bar" as typed, with the canonical symbol; a number without unit stays alone.
    [[nodiscard]] std::string text() const;
    // In another unit with no more digits than were typed: "34 psi" gives "234 kPa gauge".
    [[nodiscard]] tl::expected<std::string, UnitError> textIn(Unit other) const;
};

// A quantity of the wanted dimension. Without a written unit the FALLBACK is taken, and with none the error
// lists what would fit. A unit of another dimension is refused by name ("N.m is a unit of torque").
[[nodiscard]] tl::expected<AsTyped, UnitError> parseQuantity(std::string_view text, Dimension dimension,
                                                             std::optional<Unit> fallback = std::nullopt,
                                                             Comma comma = Comma::MayGroup);

// Number and unit text apart, nothing decided about the unit: for conversions, where the target tells what is
// meant.
struct Split {
    Typed number;
    std::string unitText;
};
[[nodiscard]] tl::expected<Split, UnitError> splitQuantity(std::string_view text,
                                                           Comma comma = Comma::MayGroup);

} // namespace undercowl::units
