// Pieces of a stroke between two edges, and what speaks for their being a wire. Only core/sight includes
// this.
#pragma once

#include "core/sight/ribbon.h"

#include <array>
#include <cstddef>
#include <vector>

namespace undercowl::sight {

inline constexpr std::size_t segmentFeatures = 22;

struct Segment {
    std::size_t left{}; // indices of its edges
    std::size_t right{};
    double at{};    // middle, on the stroke
    double width{}; // of the tube: across it, not along the stroke
    double slope{}; // of its centre line, columns for each row
    int first{};    // rows over which both sides were followed
    int last{};
    std::array<float, segmentFeatures> features{};
    double logOdds{}; // of its being a wire
};

// Every pair of edges that could be the two sides of a tube 4 to 70 px wide.
[[nodiscard]] std::vector<Segment> segmentsOf(const Ribbon& ribbon, const std::vector<RibbonEdge>& edges);

} // namespace undercowl::sight
