// Finds the tube nearest to a place and follows it both ways. Only core/sight includes this.
#pragma once

#include "core/sight/strip.h"

#include <opencv2/core.hpp>

#include <optional>
#include <vector>

namespace undercowl::sight {

// The tube that was most likely meant by a tap at p; nothing if there is no tube within reach. 'lab' is
// the picture by smoothLab().
[[nodiscard]] std::optional<Tube> findTube(const cv::Mat& lab, const Point& p);

struct Crossing {
    Tube tube;
    Point at;
};

// The tubes that a stroke crosses, in its order. 'lab' is the picture by smoothLab(). All in pixels of the
// working picture.
[[nodiscard]] std::vector<Crossing> findCrossings(const cv::Mat& lab, const Polyline& along);

} // namespace undercowl::sight
