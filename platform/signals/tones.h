// How each signal sounds. Made here, so that nothing has to be shipped or licensed.
#pragma once

#include "platform/signals/signaller.h"

#include <vector>

namespace undercowl::platform {

constexpr int toneRate = 16000; // samples a second, one channel

// Told apart by the run of their notes, not by pitch alone: listening is one short high note, recording two
// the same, saved two that rise, refused two that fall and are lower. None is longer than 300 ms or louder
// than a quarter of full scale; each begins and ends in silence, so that nothing clicks. Between 400 and 1600
// Hz: above the rumble of a compressor, and where small loudspeakers are loud. Common practice, no source.
[[nodiscard]] std::vector<short> toneOf(Signaller::Signal signal);

} // namespace undercowl::platform
