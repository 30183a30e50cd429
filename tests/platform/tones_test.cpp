// The four signals: short, quiet, without a click, and told apart by their notes.
#include "platform/signals/tones.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <numbers>
#include <optional>
#include <span>
#include <vector>

using undercowl::platform::Signaller;
using undercowl::platform::toneOf;
using undercowl::platform::toneRate;

namespace {

constexpr std::array all{Signaller::Signal::Listening, Signaller::Signal::Recording, Signaller::Signal::Saved,
                         Signaller::Signal::Refused};

// How much of the stretch swings at this pitch: Goertzel's sum, as a part of a full tone.
double swings(std::span<const short> samples, double hertz) {
    double real = 0;
    double other = 0;
    double power = 0;
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const double turn = 2 * std::numbers::pi * hertz * static_cast<double>(i) / toneRate;
        real += samples[i] * std::cos(turn);
        other += samples[i] * std::sin(turn);
        power += static_cast<double>(samples[i]) * samples[i];
    }
    return power == 0 ? 0 : 2 * (real * real + other * other) / (power * static_cast<double>(samples.size()));
}

// The pitch that a stretch swings at, to 10 Hz; 0 for silence, nothing where one note goes over into another.
std::optional<double> pitch(std::span<const short> samples) {
    if (std::ranges::all_of(samples, [](short each) { return std::abs(each) < 500; }))
        return 0;
    std::optional<double> best;
    double most = 0.8;
    for (double hertz = 200; hertz <= 2000; hertz += 10)
        if (const double part = swings(samples, hertz); part > most) {
            most = part;
            best = hertz;
        }
    return best;
}

// The notes one after the other, from stretches of 20 ms.
std::vector<double> notes(Signaller::Signal signal) {
    const auto samples = toneOf(signal);
    std::vector<double> run;
    constexpr std::size_t step = toneRate / 50;
    for (std::size_t at = 0; at + step <= samples.size(); at += step) {
        const auto now = pitch(std::span(samples).subspan(at, step));
        if (now && (run.empty() || std::abs(run.back() - *now) > 60))
            run.push_back(*now);
    }
    return run;
}

} // namespace

TEST_CASE("a signal is short and quiet, and begins and ends in silence", "[tones]") {
    for (const auto signal : all) {
        const auto samples = toneOf(signal);
        CHECK(samples.size() > toneRate / 20);
        CHECK(samples.size() <= toneRate * 3 / 10);
        const auto loudest = std::ranges::max(samples, {}, [](short each) { return std::abs(each); });
        CHECK(std::abs(loudest) < 32767 / 4);
        CHECK(std::abs(loudest) > 32767 / 10);
        CHECK(std::abs(samples.front()) < 50);
        CHECK(std::abs(samples.back()) < 50);
        // No step that would click: at most what the highest note needs.
        for (std::size_t i = 1; i < samples.size(); ++i)
            REQUIRE(std::abs(samples[i] - samples[i - 1]) <
                    32767 / 4 * 2 * std::numbers::pi * 1600 / toneRate);
    }
}

TEST_CASE("a signal is known by the run of its notes", "[tones]") {
    CHECK(notes(Signaller::Signal::Listening).size() == 1);
    const auto recording = notes(Signaller::Signal::Recording);
    REQUIRE(recording.size() == 3); // twice the same, silence between
    CHECK(recording[0] == recording[2]);
    const auto saved = notes(Signaller::Signal::Saved);
    REQUIRE(saved.size() == 2);
    CHECK(saved[1] > saved[0] * 1.2);
    const auto refused = notes(Signaller::Signal::Refused);
    REQUIRE(refused.size() == 2);
    CHECK(refused[1] < refused[0] / 1.2);
    CHECK(*std::ranges::max_element(refused) < *std::ranges::min_element(saved));
    for (const auto signal : all)
        for (const double each : notes(signal))
            if (each > 0) {
                CHECK(each >= 400);
                CHECK(each <= 1600);
            }
}
