// Synthesised voices for the ear's benchmark, by the speech synthesisers of Debian 12.
#pragma once

#include "platform/ear/sound.h"

#include <filesystem>
#include <span>
#include <string>
#include <string_view>

namespace undercowl::bench {

struct Voice {
    std::string_view name;
    std::string_view command; // %t: file with the text, %w: WAV to write
    bool heldBack{};          // never used while the ear was made: only reported on
};

[[nodiscard]] std::span<const Voice> voices();

// The text in this voice at the ear's rate; kept in the folder for the next run. An empty answer when the
// synthesiser is not installed.
[[nodiscard]] platform::Samples speak(const Voice& voice, const std::string& text,
                                      const std::filesystem::path& folder);

} // namespace undercowl::bench
