#include "platform/ear/sound.h"
#include "platform/voice/voice.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <filesystem>
#include <fstream>
#include <numbers>

using namespace undercowl::platform;

namespace {

std::filesystem::path inTemp(const char* name) {
    return std::filesystem::temp_directory_path() / name;
}

// Whole waves in what was read, counted where the sound turns positive.
int waves(const Samples& samples) {
    int count = 0;
    for (std::size_t i = 1; i < samples.size(); ++i)
        count += samples[i - 1] < 0 && samples[i] >= 0 ? 1 : 0;
    return count;
}

} // namespace

TEST_CASE("a tone keeps its pitch and level at whatever rate it was recorded") {
    for (const int rate : {8000, 16000, 22050, 44100, 48000}) {
        std::vector<short> tone(static_cast<std::size_t>(rate));
        for (std::size_t i = 0; i < tone.size(); ++i)
            tone[i] = static_cast<short>(
                std::lround(8000 * std::sin(2 * std::numbers::pi * 440 * static_cast<double>(i) / rate)));
        const auto file = inTemp("undercowl_tone.wav");
        REQUIRE(writeSound(file, tone, rate));
        const auto read = readSound(file);
        std::filesystem::remove(file);
        REQUIRE(read);
        INFO(rate);
        CHECK(std::abs(static_cast<int>(read->size()) - earRate) < 200);
        CHECK(std::abs(waves(*read) - 440) <= 3);
        float peak = 0;
        for (const float sample : *read)
            peak = std::max(peak, std::abs(sample));
        CHECK(peak == Approx(8000.0 / 32768).epsilon(0.05));
    }
}

TEST_CASE("a file that is no sound, or too long a one, is refused with what to do") {
    CHECK(readSound(inTemp("undercowl_none.wav")).error().find("undercowl_none.wav") != std::string::npos);
    const auto file = inTemp("undercowl_bad.wav");
    std::ofstream{file} << "RIFF but no sound at all";
    CHECK_FALSE(readSound(file));
    REQUIRE(writeSound(file, {}, 16000));
    CHECK(readSound(file).error().find("no sound") != std::string::npos);
    REQUIRE(writeSound(file, std::vector<short>(16000 * (longestSeconds + 1)), 16000));
    CHECK(readSound(file).error().find("longer than") != std::string::npos);
    std::filesystem::remove(file);
    CHECK_FALSE(writeSound("/nowhere/at/all.wav", std::vector<short>(10), 16000));
}

TEST_CASE("a slower pace stretches what is said") {
    const std::vector<std::string> sentence{"place three, green with white tracer"};
    const auto plain = speak(sentence);
    const auto slow = speak(sentence, 1.5);
    REQUIRE(plain);
    REQUIRE(slow);
    CHECK(plain->rate == 16000);
    CHECK(static_cast<double>(slow->samples.size()) > 1.3 * static_cast<double>(plain->samples.size()));
    CHECK(speak({}).value().samples.empty());
}
