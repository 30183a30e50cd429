#include "platform/signals/tones.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace undercowl::platform {

namespace {

constexpr double loudness = 0.22 * 32767;
constexpr double edge = 0.008; // s that a note takes to come and to go

struct Note {
    double hertz; // 0: silence
    double seconds;
};

void add(std::vector<short>& samples, Note note) {
    const auto count = static_cast<int>(note.seconds * toneRate);
    for (int i = 0; i <= count; ++i) {
        const double at = static_cast<double>(i) / toneRate;
        const double left = note.seconds - at;
        const double ramp = std::clamp(std::min(at, left) / edge, 0.0, 1.0);
        // Raised cosine: no corner that would click.
        const double envelope = (1 - std::cos(ramp * std::numbers::pi)) / 2;
        samples.push_back(static_cast<short>(
            std::lround(loudness * envelope * std::sin(2 * std::numbers::pi * note.hertz * at))));
    }
}

} // namespace

std::vector<short> toneOf(Signaller::Signal signal) {
    std::vector<Note> notes;
    switch (signal) {
    case Signaller::Signal::Listening: notes = {{1320, 0.07}}; break;
    case Signaller::Signal::Recording: notes = {{880, 0.08}, {0, 0.05}, {880, 0.08}}; break;
    case Signaller::Signal::Saved: notes = {{784, 0.07}, {1175, 0.11}}; break;
    case Signaller::Signal::Refused: notes = {{587, 0.12}, {440, 0.16}}; break;
    }
    std::vector<short> samples;
    for (const Note& note : notes)
        add(samples, note);
    return samples;
}

} // namespace undercowl::platform
