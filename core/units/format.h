// Writing quantities: never more digits than the instrument gave.
#pragma once

#include "core/units/quantity.h"

#include <string>

namespace undercowl::units {

// "12.50" with the given number of decimals (0 to 12), a point as decimal mark, "-0" written "0". Independent
// of locale.
[[nodiscard]] std::string formatFixed(double value, int decimals);

// SIGNIFICANT digits without an exponent and without zeros that only pad: 1.500 with four gives "1.5".
[[nodiscard]] std::string formatSignificant(double value, int significant = 4);

// The shortest text that reads back as the same double.
[[nodiscard]] std::string formatExact(double value);

// To the digit that STEP (in the quantity's own unit) resolves: a gauge with 5 kPa divisions gives whole
// kilopascals. The last digit is at most STEP and more than a tenth of it. A step of 0 or less means unknown:
// four significant digits.
[[nodiscard]] std::string formatToStep(const Quantity& quantity, double step);

// "12.3 N.m"; a plain number has no symbol, per cent is written "%".
[[nodiscard]] std::string format(const Quantity& quantity, int significant = 4);

// Number and symbol: "12.3" with N.m gives "12.3 N.m".
[[nodiscard]] std::string withSymbol(const std::string& number, Unit unit);

// What a STEP at QUANTITY, in its unit, is in another unit: right for curved scales as well.
[[nodiscard]] double convertedStep(const Quantity& quantity, double step, Unit other);

} // namespace undercowl::units
