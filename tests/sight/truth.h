// What tests/photos/truth.json says is in the photos; its fields are explained in the README beside it.
#pragma once

#include "core/sight/reader.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace undercowl::tests {

struct TrueTap {
    sight::Point at;
    double tracerShare{}; // of the wire's pixels near the tap
};

struct TrueWire {
    int id{};
    colour::WireColour colour;
    bool tracerVisible{};
    double diameterPx{};
    sight::Polyline centreLine; // only where nothing lies over it
    std::vector<TrueTap> taps;
};

struct TrueSweep {
    sight::Polyline along;
    std::vector<const TrueWire*> wires; // in the stroke's order
};

struct TruePhoto {
    std::filesystem::path file;
    double width{};
    double height{};
    std::optional<sight::Card> card;
    std::vector<TrueWire> wires;
    std::vector<TrueSweep> sweeps; // pointing into wires
};

// From the nearest point of a line whose points lie close.
[[nodiscard]] double distance(const sight::Polyline& line, sight::Point from);

// Of every photo in the folder; fails the test when the file is not as described.
[[nodiscard]] std::vector<TruePhoto> truthOf(const std::filesystem::path& folder);

} // namespace undercowl::tests
