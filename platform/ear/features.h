// What the networks see of a sound: how strong each band of pitch is, every 10 ms.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace undercowl::platform {

inline constexpr std::size_t earBands = 64;

// Values by band, then by frame.
struct Features {
    std::size_t frames{};
    std::vector<float> values;
};

// Logarithms of the power in earBands triangles, equally wide on the mel scale from 60 to 7600 Hz, over
// windows of 32 ms; each band less its mean over the sound, so that level, microphone and steady hum fall
// out. Without a frame for less than one window. The same as Features in tests/platform/ear/train/learn.py.
[[nodiscard]] Features features(std::span<const float> samples);

} // namespace undercowl::platform
