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

// Whether the finder is less than sure of the wire around the place where the following began: so it sees
// shadows, folds and the ground between two wires, when it takes them for wires, and now and then a wire. The
// limits of this and the next were chosen on taps beside the wires of rendered photos, and looked at on taps
// on real ones. Precondition for both: the centre line has a point.
[[nodiscard]] bool hardlySeen(Fields& fields, const cv::Mat& lab, const Tube& tube);

// Whether a tap at p may have meant another wire than the one that was followed from it: it lies beside that,
// or where it meets another, or off its middle, that is hardly seen, and next to another.
[[nodiscard]] bool mayMeanAnother(Fields& fields, const cv::Mat& lab, const Tube& tube, const Point& p);

// Follows the wire that is seen at its start by this many widths to either side.
[[nodiscard]] Tube follow(const Map& map, Seen start, double most = followedWidths);

// Follows the wire under a cell of the fields by this many widths to either side. Precondition: the cell
// exists.
[[nodiscard]] Tube followFrom(Fields& fields, const cv::Mat& lab, int column, int row, double widths);

} // namespace undercowl::sight
