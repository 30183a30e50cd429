// Chromatic adaptation: what a colour seen under one light would be under another (von Kries scaling in a
// cone space).
#pragma once

#include "core/colour/spaces.h"

namespace undercowl::colour {

enum class ConeSpace : std::uint8_t {
    Cat02,    // CIECAM02 (CIE 159:2004)
    Bradford, // Lam 1985, as used by ICC profiles
};

// Full adaptation from one white to another. Both whites must have all three values above 0; only their
// chromaticity and relative luminance matter, as a plain scaling of a white scales the result.
[[nodiscard]] Xyz adapt(const Xyz& colour, const Xyz& fromWhite, const Xyz& toWhite,
                        ConeSpace space = ConeSpace::Cat02);

// XYZ with Y = 1 of a black body of that temperature, after the cubic approximation of Kim et al. 2002 to the
// Planckian locus. Kelvin, 1667 to 25000; held at the nearer end outside.
[[nodiscard]] Xyz planckianWhite(double kelvin);

} // namespace undercowl::colour
