// Photos as if they had been taken from further away.
#pragma once

#include "tests/sight/truth.h"

namespace undercowl::tests {

// The photo with so many pixels for each of its own, 0 to 1; its truth is made smaller with it. The card is
// taken out of view.
[[nodiscard]] sight::Photo fromFurther(TruePhoto& truth, double share);

} // namespace undercowl::tests
