#include "core/sight/follow.h"

#include "core/sight/ribbon.h"
#include "core/sight/segmenttrees.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace undercowl::sight {
namespace {

constexpr int reach = 40; // rows to either side of a stroke
constexpr int strokes = 8;
constexpr double leastWorth = -4.0; // log odds below which nothing wire-like is there
constexpr double tapReach = 64.0;   // how far from a tap a wire is looked for, px

// The middle between the two edges, over the rows on which both could be followed.
Tube tubeOf(const Ribbon& ribbon, const std::vector<RibbonEdge>& edges, const Segment& segment) {
    const RibbonEdge& left = edges[segment.left];
    const RibbonEdge& right = edges[segment.right];
    Tube tube;
    tube.width = segment.width;
    tube.strength = 1.0 / (1.0 + std::exp(-segment.logOdds));
    for (int row = segment.first; row <= segment.last; row += 2) {
        const double a = double(left.path[static_cast<std::size_t>(row - left.first)]);
        const double b = double(right.path[static_cast<std::size_t>(row - right.first)]);
        tube.centre.push_back(ribbon.toPicture(0.5 * (a + b), row));
    }
    return tube;
}

// What a wire loses by lying away from the tap: nothing within its own width, then more with each width.
double farAway(double distance, double width) {
    return 3.0 * std::max(0.0, distance / width - 0.45);
}

// Once it is plain that something is a wire, the nearer one was meant, not the plainer one.
double wireLike(double logOdds) {
    return std::min(logOdds, 1.5) + 0.1 * logOdds;
}

} // namespace

std::optional<Tube> findTube(const cv::Mat& lab, const Point& p) {
    std::optional<Tube> best;
    double bestWorth = leastWorth;
    for (int turn = 0; turn < strokes; ++turn) {
        const double angle = std::numbers::pi * turn / strokes;
        const double c = tapReach * std::cos(angle);
        const double n = tapReach * std::sin(angle);
        const Ribbon ribbon = ribbonAlong(lab, {{p.x - c, p.y - n}, {p.x + c, p.y + n}}, reach);
        const std::vector<RibbonEdge> edges = edgesOf(ribbon);
        for (Segment& segment : segmentsOf(ribbon, edges)) {
            segment.logOdds = logOddsOfWire(segment.features);
            const double distance = std::abs(segment.at - tapReach) / std::hypot(1.0, segment.slope);
            const double worth = wireLike(segment.logOdds) - farAway(distance, segment.width);
            if (worth > bestWorth) {
                bestWorth = worth;
                best = tubeOf(ribbon, edges, segment);
            }
        }
    }
    return best;
}

std::vector<Crossing> findCrossings(const cv::Mat& lab, const Polyline& along) {
    const Ribbon ribbon = ribbonAlong(lab, along, reach);
    const std::vector<RibbonEdge> edges = edgesOf(ribbon);
    std::vector<Crossing> crossings;
    for (const Segment& segment : bestRow(segmentsOf(ribbon, edges)))
        crossings.push_back({tubeOf(ribbon, edges, segment), ribbon.toPicture(segment.at, 0.0)});
    return crossings;
}

} // namespace undercowl::sight
