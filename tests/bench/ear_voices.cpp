#include "tests/bench/ear_voices.h"

#include <array>
#include <cstdlib>
#include <fstream>
#include <functional>

namespace undercowl::bench {
namespace {

constexpr std::array all{
    Voice{"flite kal16", "flite -voice kal16 -f %t -o %w", false},
    Voice{"flite awb", "flite -voice awb -f %t -o %w", false},
    Voice{"flite slt", "flite -voice slt -f %t -o %w", false},
    Voice{"espeak-ng en-gb", "espeak-ng -v en-gb -s 150 -f %t -w %w", false},
    Voice{"espeak-ng en-us f3", "espeak-ng -v en-us+f3 -s 150 -f %t -w %w", false},
    Voice{"flite rms", "flite -voice rms -f %t -o %w", true},
    Voice{"festival ked", "text2wave -eval '(voice_ked_diphone)' %t -o %w", true},
    Voice{"espeak-ng en-gb-scotland m3", "espeak-ng -v en-gb-scotland+m3 -s 150 -f %t -w %w", true},
    Voice{"espeak-ng en-us f2", "espeak-ng -v en-us+f2 -s 150 -f %t -w %w", true},
};

void replace(std::string& text, std::string_view what, const std::string& by) {
    text.replace(text.find(what), what.size(), "'" + by + "'");
}

} // namespace

std::span<const Voice> voices() {
    return all;
}

platform::Samples speak(const Voice& voice, const std::string& text, const std::filesystem::path& folder) {
    const auto stem = folder / std::to_string(std::hash<std::string>{}(std::string{voice.command} + text));
    const std::filesystem::path wav = stem.string() + ".wav";
    if (!std::filesystem::exists(wav)) {
        const std::filesystem::path words = stem.string() + ".txt";
        const std::filesystem::path made = stem.string() + ".new";
        std::ofstream{words} << text << '\n';
        std::string command{voice.command};
        replace(command, "%t", words.string());
        replace(command, "%w", made.string());
        if (std::system((command + " >/dev/null 2>&1").c_str()) != 0) // NOLINT: our own commands
            return {};
        std::filesystem::rename(made, wav);
    }
    return platform::readSound(wav).value_or(platform::Samples{});
}

} // namespace undercowl::bench
