// A wire pulled straight: what is seen along and across it. Only core/sight includes this.
#pragma once

#include "core/sight/geometry.h"
#include "core/sight/networks.h"

#include <opencv2/core.hpp>

#include <cstddef>
#include <vector>

namespace undercowl::sight {

// A wire that was followed, in pixels of the working picture.
struct Tube {
    Polyline centre;      // from one end of what was followed to the other
    std::size_t anchor{}; // index of the place where the following began
    double width{};
    double strength{}; // 0 to 1: how surely it is a wire
};

// A wire is followed by this many widths to either side.
inline constexpr double followedWidths = 24.0;

// The wire around the anchor, eight widths to either side, as the networks have learned to read it; 'share'
// of its width is taken for the whole. Cut a little narrower the networks err in another way: a shadow beside
// the wire passes for a stripe in one of them.
[[nodiscard]] Strip straighten(const cv::Mat& rgb, Tube tube, double share);

// The same beyond that, on either side where enough was followed; none, one or two.
[[nodiscard]] std::vector<Strip> straightenFurther(const cv::Mat& rgb, const Tube& tube);

} // namespace undercowl::sight
