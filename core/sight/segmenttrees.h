// The learned judgement of a segment. Only core/sight includes this.
#pragma once

#include "core/sight/segment.h"

#include <vector>

namespace undercowl::sight {

// Log odds of its being a wire, from its features: boosted trees, learned by
// tests/sight/train/learn_segments.py.
[[nodiscard]] double logOddsOfWire(const std::array<float, segmentFeatures>& features);

// The segments that best explain the stroke as a row of wires: none overlaps another, and the sum of their
// log odds is the largest. In the stroke's order. Fills logOdds.
[[nodiscard]] std::vector<Segment> bestRow(std::vector<Segment> segments);

} // namespace undercowl::sight
