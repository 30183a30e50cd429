// Finds the tube nearest to a place and follows it both ways. Only core/sight includes this.
#pragma once

#include "core/sight/edges.h"
#include "core/sight/strip.h"

#include <optional>
#include <vector>

namespace undercowl::sight {

// The tube that was most likely meant by a tap at p; nothing if there is no tube within reach.
[[nodiscard]] std::optional<Tube> findTube(const Edges& edges, const Point& p);

struct Crossing {
    Tube tube;
    Point at;
};

// The tubes that a stroke crosses, in its order. All in pixels of the working picture.
[[nodiscard]] std::vector<Crossing> findCrossings(const Edges& edges, const Polyline& along);

} // namespace undercowl::sight
