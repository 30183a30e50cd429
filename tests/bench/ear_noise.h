// The noises of a workshop, made from numbers: the same in each run.
#pragma once

#include "platform/ear/sound.h"

#include <string_view>

namespace undercowl::bench {

enum class Noise {
    None,
    Brown,  // fan and compressor: white noise integrated, 6 dB less in each octave
    Engine, // sawtooth of 45 to 110 Hz that wanders, and as much broad-band (pink) noise
};

// The speech with a quarter of a second before and after it, and the noise over all of it. 'decibels' is the
// ratio of the mean power of the speech, as it was synthesised, to that of the noise.
[[nodiscard]] platform::Samples under(Noise noise, double decibels, const platform::Samples& speech,
                                      unsigned seed);

} // namespace undercowl::bench
