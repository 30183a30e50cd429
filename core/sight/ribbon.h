// The neighbourhood of a stroke pulled straight, and the edges that cross it. Only core/sight includes this.
#pragma once

#include "core/sight/geometry.h"

#include <opencv2/core.hpp>

#include <vector>

namespace undercowl::sight {

// CIELAB of the working picture, slightly smoothed: what edges and colours are looked for in. CV_32FC3.
[[nodiscard]] cv::Mat smoothLab(const cv::Mat& rgb);

// Columns run along the stroke, one a pixel; rows lie across it, the stroke itself in the middle row.
struct Ribbon {
    cv::Mat lab; // CV_32FC3
    int reach{}; // rows on either side of the stroke
    Polyline stroke;
    std::vector<double> turns;  // at which column each corner of the stroke lies
    std::vector<double> angles; // of each straight part, radians

    [[nodiscard]] Point toPicture(double along, double across) const;
    [[nodiscard]] double angleAt(double along) const;
};

[[nodiscard]] Ribbon ribbonAlong(const cv::Mat& lab, const Polyline& stroke, int reach);

// An edge that crosses the stroke and was followed to both sides.
struct RibbonEdge {
    double at{};       // where it crosses the stroke
    double slope{};    // columns for each row
    double strength{}; // Lab units a pixel
    cv::Vec3f step;    // colour change across it, in the stroke's direction
    int first{};       // rows, relative to the stroke, over which it could be followed
    int last{};
    std::vector<float> path; // column for each row from first to last
};

[[nodiscard]] std::vector<RibbonEdge> edgesOf(const Ribbon& ribbon);

} // namespace undercowl::sight
