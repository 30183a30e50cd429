// What is seen of one wire, with how sure it is and why not.
#pragma once

#include "core/colour/insulation.h"
#include "core/sight/geometry.h"

#include <cstdint>
#include <string_view>
#include <vector>

namespace undercowl::sight {

// Why a reading is not sure. A shell translates these; englishWords() is for the command line.
enum class Doubt : std::uint8_t {
    Glare,         // highlights cover most of it
    Shadow,        // too dark to tell
    TooThin,       // narrower than 4 px: go closer
    NoWhiteInView, // the light is unknown: lay a sheet of paper beside it
    Hidden,        // crossed by something else: too little of it is free
    CloseColours,  // two answers are about as likely
    NoWireFound,   // nothing wire-like near the tap
    BurntOut,      // clipped: too much light
    UnevenLight,   // two lights mix on it
    NotProven,     // likely, but answers as likely were wrong too often
    BesideWire,    // beside the wire that was read, or where two meet: another may have been meant
};

[[nodiscard]] std::string_view code(Doubt doubt);         // "glare", for JSON
[[nodiscard]] std::string_view englishWords(Doubt doubt); // "glare covers it: tilt the phone"

struct Candidate {
    colour::WireColour wire;
    double probability{}; // 0 to 1
};

struct WireReading {
    std::vector<Candidate>
        candidates;            // best first, probabilities sum to at most 1; empty when no wire was found
    bool sure{};               // chance of being wrong judged to be under 1 in 200
    std::vector<Doubt> doubts; // empty when sure
    Point at;                  // where it was asked for, or where the stroke crosses it
    Polyline path;             // the centre line that was followed
    double widthPx{};          // across the wire
    double plainness{1.0};     // how plainly it is a wire at all and no gap or stripe, 0 to 1

    [[nodiscard]] bool found() const { return !candidates.empty(); }
};

} // namespace undercowl::sight
