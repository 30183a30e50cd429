#include "core/sight/beside.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace undercowl::sight {
namespace {

std::size_t nearestIndex(const Polyline& line, const Point& p) {
    const auto away = [&](const Point& q) { return std::hypot(q.x - p.x, q.y - p.y); };
    const auto nearest = std::min_element(line.begin(), line.end(),
                                          [&](const Point& a, const Point& b) { return away(a) < away(b); });
    return std::size_t(nearest - line.begin());
}

// Unit direction of a line at one of its points; level where the line is a single point.
Point directionAt(const Polyline& line, std::size_t index) {
    const Point& a = line[index < 2 ? 0 : index - 2];
    const Point& b = line[std::min(line.size() - 1, index + 2)];
    const double length = std::hypot(b.x - a.x, b.y - a.y);
    return length < 1e-6 ? Point{1.0, 0.0} : Point{(b.x - a.x) / length, (b.y - a.y) / length};
}

// Across the wire, to the right, or down where the wire lies more level than steep; or the other way.
Point lookingAside(const Point& along, bool forward) {
    const Point across{-along.y, along.x};
    const bool steep = std::abs(across.x) >= std::abs(across.y);
    const bool turned = ((steep ? across.x : across.y) > 0.0) != forward;
    return turned ? Point{-across.x, -across.y} : across;
}

} // namespace

std::optional<Crossing> findBeside(Fields& fields, const cv::Mat& lab, const Polyline& centre, double width,
                                   const Point& at, bool forward) {
    constexpr double reach = 14.0; // widths; further away it is no neighbour
    const double right = 2.0 * fields.columns() - 1.0;
    const double bottom = 2.0 * fields.rows() - 1.0;
    const std::size_t anchor = nearestIndex(centre, at);
    const Point aside = lookingAside(directionAt(centre, anchor), forward);
    const auto inside = [&](const Point& p) {
        return p.x >= 0.0 && p.y >= 0.0 && p.x <= right && p.y <= bottom;
    };

    // A neighbour that is hidden next to the place may show a little further along the wire.
    std::optional<Crossing> nearest;
    double least = 1e9;
    for (const double along : {0.0, 2.0, -2.0, 4.0, -4.0}) {
        double travelled = 0.0;
        std::size_t i = anchor;
        while (travelled < std::abs(along) * width) {
            const std::size_t next = along > 0.0 ? i + 1 : i - 1; // wraps below 0
            if (next >= centre.size())
                break;
            travelled += std::hypot(centre[next].x - centre[i].x, centre[next].y - centre[i].y);
            i = next;
        }
        if (travelled < std::abs(along) * width - 0.5 * width)
            continue;
        const Point& from = centre[i];
        double far = reach * width;
        while (far > width && !inside({from.x + far * aside.x, from.y + far * aside.y}))
            far -= 0.5 * width;
        if (far <= width)
            continue;
        for (Crossing& crossing :
             findCrossings(fields, lab, {from, {from.x + far * aside.x, from.y + far * aside.y}})) {
            const double away = std::hypot(crossing.at.x - from.x, crossing.at.y - from.y);
            // The wire itself, where it bends towards the look.
            if (away < 0.5 * width || distanceTo(centre, crossing.at) < 0.4 * width)
                continue;
            // What lies across is met early wherever one looks from, but is no neighbour.
            const Point other = directionAt(crossing.tube.centre, crossing.tube.anchor);
            const bool lengthwise = std::abs(other.x * aside.x + other.y * aside.y) < 0.77;
            const double rank = away + (lengthwise ? 0.0 : 4.0 * width) + 0.3 * std::abs(along) * width;
            if (rank < least) {
                least = rank;
                nearest = std::move(crossing);
            }
            if (lengthwise)
                break;
        }
    }
    return nearest;
}

} // namespace undercowl::sight
