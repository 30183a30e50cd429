// Finds the wire nearest to a place and follows it both ways. Only core/sight includes this.
#pragma once

#include "core/sight/fields.h"
#include "core/sight/map.h"
#include "core/sight/strip.h"

#include <optional>

namespace undercowl::sight {

// CIELAB of the working picture, slightly smoothed, in eight bits: what tells one wire from the next where
// they cross. CV_8UC3.
[[nodiscard]] cv::Mat smoothLab(const cv::Mat& rgb);

// The wire that was most likely meant by a tap at p: the nearest within reach; nothing if there is none. All
// in pixels of the working picture.
[[nodiscard]] std::optional<Tube> findTube(Fields& fields, const cv::Mat& lab, const Point& p);

// From the nearest point of a line. Precondition: it has one.
[[nodiscard]] double distanceTo(const Polyline& line, const Point& p);

[[nodiscard]] double lengthOf(const Polyline& line); // in the unit of its points

// Follows the wire that is seen at its start by this many widths to either side.
[[nodiscard]] Tube follow(const Map& map, Seen start, double most = followedWidths);

// Follows the wire under a cell of the fields by this many widths to either side. Precondition: the cell
// exists.
[[nodiscard]] Tube followFrom(Fields& fields, const cv::Mat& lab, int column, int row, double widths);

} // namespace undercowl::sight
