// A number with its unit.
#pragma once

#include "core/units/unit.h"

#include <string>
#include <tl/expected.hpp>

namespace undercowl::units {

// Why a quantity could not be read or converted. The message names what was given and what would fit; it is
// English, the kind is for a shell that speaks another language.
struct UnitError {
    enum class Kind {
        NotANumber,
        AmbiguousNumber,
        MissingUnit,
        UnknownUnit,
        WrongUnit,
        AmbiguousUnit,
        OutOfRange
    };
    Kind kind{};
    std::string message;
};

// The value is in the unit. Converting never changes the unit's dimension.
struct Quantity {
    double value = 0;
    Unit unit;

    // The value in another unit OF THE SAME DIMENSION; a different one is a mistake of the programmer and
    // ends the program. Use convert() for units that a person chose. Exact ratios in extended precision,
    // rounded once.
    [[nodiscard]] double in(Unit other) const;
    // In the base unit of its dimension.
    [[nodiscard]] double base() const { return in(baseUnit(unit.dimension())); }
};

// The same thing in another unit. Refuses torque to energy, gauge to absolute and every other change of
// dimension, naming what would fit.
[[nodiscard]] tl::expected<Quantity, UnitError> convert(const Quantity& quantity, Unit to);

// Ambient pressure joins the two kinds of pressure: absolute = gauge + ambient.
[[nodiscard]] Quantity toAbsolute(const Quantity& gauge, const Quantity& ambientAbsolute);
[[nodiscard]] Quantity toGauge(const Quantity& absolute, const Quantity& ambientAbsolute);

} // namespace undercowl::units
