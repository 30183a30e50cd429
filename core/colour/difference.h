// How different two colours look.
#pragma once

#include "core/colour/spaces.h"

namespace undercowl::colour {

// CIEDE2000 (CIE 142:2001; Sharma, Wu and Dalal 2005) with kL = kC = kH = 1. About 1 is just noticeable side
// by side, 3 is easily told apart. Symmetric, 0 for equal colours.
[[nodiscard]] double ciede2000(const Lab& one, const Lab& other);

} // namespace undercowl::colour
