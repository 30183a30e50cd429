// What each insulation colour measures: a spread of CIELAB values, not one.
//
// There is no standard for it: IEC 60757 fixes names and no coordinates. The figures were measured by us on
// photos with a neutral card in view and widened for makers, age and dirt; docs/wire-colours.md gives the
// reasoning for each.
#pragma once

#include "core/colour/insulation.h"
#include "core/colour/spaces.h"

namespace undercowl::colour {

struct Distribution {
    Lab mean;   // under D65, of a lit, clean part of the wire
    Lab spread; // one standard deviation in each of L, a and b
};

[[nodiscard]] const Distribution& distribution(Insulation colour);

// Log of the density of that insulation at a measured colour, up to a constant that is the same for all.
// Tails are those of a Student distribution, since dirt and odd makers are commoner than a normal
// distribution allows.
[[nodiscard]] double logDensity(Insulation colour, const Lab& measured);

} // namespace undercowl::colour
