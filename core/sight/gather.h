// All wires of a picture that can be followed. Only core/sight includes this.
#pragma once

#include "core/sight/follow.h"

#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

namespace undercowl::sight {

// One wire. Where it dives under another it was followed in pieces, which belong together when they point at
// each other and look alike.
struct WholeWire {
    Tube tube;     // its longest piece, begun in the middle
    Polyline path; // all of it
    std::optional<std::size_t>
        perhaps; // the same as that one, which looks alike on the other side of a sleeve
};

struct Gathered {
    std::vector<WholeWire> wires;
    std::vector<Point> unfollowed; // here is wire, but none of those above
};

// Each wire once, ordered across the way that most of them run: from the left, or from the top where they run
// more level than steep. In pixels of the working picture. Nothing when 'cancelled' answered true.
[[nodiscard]] Gathered gatherWires(Fields& fields, const cv::Mat& lab,
                                   const std::function<bool()>& cancelled);

// Those that come out of a connector whose mouth lies along a line: they reach it or point at it close by. In
// the order along it.
[[nodiscard]] std::vector<WholeWire> fromMouth(std::vector<WholeWire> wires, const Polyline& mouth);

} // namespace undercowl::sight
