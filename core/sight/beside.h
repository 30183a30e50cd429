// The wire next to another one. Only core/sight includes this.
#pragma once

#include "core/sight/cross.h"

#include <optional>

namespace undercowl::sight {

// The nearest wire beside the one whose centre line is given, seen from its place next to 'at'. 'forward'
// looks to the right, or down where the wire lies more level than steep; otherwise the other way. Nothing
// where no wire lies within some widths. All in pixels of the working picture. Precondition: the line has a
// point.
[[nodiscard]] std::optional<Crossing> findBeside(Fields& fields, const cv::Mat& lab, const Polyline& centre,
                                                 double width, const Point& at, bool forward);

} // namespace undercowl::sight
