// One spelling for the many ways in which a unit is written.
#pragma once

#include <string>
#include <string_view>

namespace undercowl::units {

// Without spaces; middle dots, stars and hyphens become a full stop; superscripts, degree, micro and ohm
// signs become ASCII: "N\u00b7m" and "N m" give "N.m" and "Nm", "\u00b0C" gives "degC", "1/2\u2033" keeps its
// inch mark as ".
[[nodiscard]] std::string compactSpelling(std::string_view text);

// ASCII lower case of it.
[[nodiscard]] std::string foldedSpelling(std::string_view compact);

// Leading and trailing blanks removed, no-break and thin spaces turned into plain ones, the true minus sign
// into a hyphen, fullwidth and vulgar fractions into digits ("\u00bd" gives " 1/2").
[[nodiscard]] std::string plainBlanks(std::string_view text);

} // namespace undercowl::units
