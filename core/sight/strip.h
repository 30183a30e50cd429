// A wire pulled straight: what is seen along and across it. Only core/sight includes this.
#pragma once

#include "core/sight/geometry.h"

#include <opencv2/core.hpp>

#include <vector>

namespace undercowl::sight {

// A tube that was followed, in pixels of the working picture.
struct Tube {
    Polyline centre; // evenly spaced
    double width{};
    double strength{}; // 0 to 1: how wire-like it looks
};

// Rows run along the wire, columns across it from edge to edge; CV_32FC3, linear light.
[[nodiscard]] cv::Mat straighten(const cv::Mat& linear, const Tube& tube, int columns, double share);

// sRGB bytes to linear light, 0 to 1.
[[nodiscard]] cv::Mat toLinearLight(const cv::Mat& rgb);

// The unit direction of the centre line at one of its points.
[[nodiscard]] Point directionAt(const Polyline& line, std::size_t index);

} // namespace undercowl::sight
