// The wires that a stroke crosses. Only core/sight includes this.
#pragma once

#include "core/sight/follow.h"

#include <vector>

namespace undercowl::sight {

struct Crossing {
    Tube tube;
    Point at;
};

// The wires that a stroke crosses, in its order, each once. 'lab' as from smoothLab(); all in its pixels.
[[nodiscard]] std::vector<Crossing> findCrossings(Fields& fields, const cv::Mat& lab, const Polyline& along);

} // namespace undercowl::sight
