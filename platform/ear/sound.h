// Sound files, as the ear takes them.
#pragma once

#include <filesystem>
#include <span>
#include <string>
#include <tl/expected.hpp>
#include <vector>

namespace undercowl::platform {

inline constexpr int earRate = 16000; // samples a second that the acoustic model was trained with

// One channel at earRate, -1 to 1.
using Samples = std::vector<float>;

// Longer recordings are no commands, and are refused rather than searched through.
inline constexpr int longestSeconds = 30;

// Reads a sound file (WAV, FLAC, Ogg and what else libsndfile knows) of any rate from 4 to 192 kHz; channels
// are averaged. The error says what is wrong with the file and what to do.
[[nodiscard]] tl::expected<Samples, std::string> readSound(const std::filesystem::path& file);

// Writes 16 bit WAV. The error says why it could not be written.
[[nodiscard]] tl::expected<void, std::string> writeSound(const std::filesystem::path& file,
                                                         std::span<const short> samples, int rate);

} // namespace undercowl::platform
