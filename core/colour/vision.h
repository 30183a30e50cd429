// How a colour looks to someone with a colour-vision deficiency (Machado, Oliveira and Fernandes 2009).
#pragma once

#include "core/colour/insulation.h"
#include "core/colour/spaces.h"

namespace undercowl::colour {

enum class Deficiency : std::uint8_t { None, Protan, Deutan, Tritan };

// How a mechanic sees, set once. Severity runs from 0 (as everyone) to 1 (one cone type missing).
struct Vision {
    Deficiency deficiency{Deficiency::None};
    double severity{1.0};
};

// The colour as that person sees it. Severity is held to 0..1; between the published steps 0, 0.5 and 1 the
// matrices are interpolated.
[[nodiscard]] LinearRgb asSeen(const LinearRgb& colour, const Vision& vision);

// CIEDE2000 between the two as that person sees them.
[[nodiscard]] double differenceAsSeen(const Lab& one, const Lab& other, const Vision& vision);

} // namespace undercowl::colour
