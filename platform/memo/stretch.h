// Speech said faster or slower without another pitch.
#pragma once

#include <span>
#include <vector>

namespace undercowl::platform {

// pace: 1.5 is half as fast again; 0.5 to 3. Overlapping pieces are laid where they fit best to what is there
// already (W. Verhelst, M. Roelands, WSOLA, 1993). At 1, or too short for that, as given.
[[nodiscard]] std::vector<short> stretched(std::span<const short> samples, int rate, double pace);

} // namespace undercowl::platform
