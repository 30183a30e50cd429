#include "core/sight/segmenttrees.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace undercowl::sight {
namespace {

struct TreeNode {
    int feature; // -1: a leaf
    float value; // threshold, or what the leaf adds
    std::uint16_t below;
    std::uint16_t above;
};

#include "core/sight/segment_trees.inc"

// A segment in ten is a wire, but of those that fit into a row far more are: what is added to make up for it.
constexpr double rowBonus = 0.8;
constexpr double mayOverlap = 0.18; // of the narrower one: wires that touch share an edge

double startOf(const Segment& s) {
    return s.at - 0.5 * s.width * std::hypot(1.0, s.slope);
}
double endOf(const Segment& s) {
    return s.at + 0.5 * s.width * std::hypot(1.0, s.slope);
}

} // namespace

double logOddsOfWire(const std::array<float, segmentFeatures>& features) {
    double sum = treesStart;
    for (const std::uint16_t root : treeRoots) {
        const TreeNode* node = &treeNodes[root];
        while (node->feature >= 0)
            node = &treeNodes[features[static_cast<std::size_t>(node->feature)] <= node->value ? node->below
                                                                                               : node->above];
        sum += static_cast<double>(node->value);
    }
    return sum;
}

std::vector<Segment> bestRow(std::vector<Segment> segments) {
    for (Segment& segment : segments)
        segment.logOdds = logOddsOfWire(segment.features);
    std::erase_if(segments, [](const Segment& s) { return s.logOdds + rowBonus <= 0.0; });
    std::sort(segments.begin(), segments.end(),
              [](const Segment& a, const Segment& b) { return endOf(a) < endOf(b); });
    std::vector<double> worth(segments.size());
    std::vector<std::ptrdiff_t> before(segments.size(), -1);
    for (std::size_t i = 0; i < segments.size(); ++i) {
        worth[i] = segments[i].logOdds + rowBonus;
        for (std::size_t j = 0; j < i; ++j) {
            const double slack = mayOverlap * std::min(segments[i].width, segments[j].width);
            if (endOf(segments[j]) <= startOf(segments[i]) + slack &&
                worth[j] + segments[i].logOdds + rowBonus > worth[i]) {
                worth[i] = worth[j] + segments[i].logOdds + rowBonus;
                before[i] = static_cast<std::ptrdiff_t>(j);
            }
        }
    }
    std::vector<Segment> row;
    if (segments.empty())
        return row;
    auto at = static_cast<std::ptrdiff_t>(std::max_element(worth.begin(), worth.end()) - worth.begin());
    for (; at >= 0; at = before[static_cast<std::size_t>(at)])
        row.push_back(segments[static_cast<std::size_t>(at)]);
    std::reverse(row.begin(), row.end());
    return row;
}

} // namespace undercowl::sight
