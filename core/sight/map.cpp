#include "core/sight/map.h"

#include <algorithm>
#include <cmath>

namespace undercowl::sight {
namespace {

Seen seen(const Cell& told, int column, int row) {
    const double angle = 0.5 * std::atan2(double(told.sin2), double(told.cos2));
    const Point place = Map::placeOf(column, row);
    return {told.wire,
            {place.x + told.dx, place.y + told.dy},
            {std::cos(angle), std::sin(angle)},
            2.0 * told.halfWidth};
}

} // namespace

Map::Section Map::section(const Point& centre, const Point& along, double width) const {
    Section out;
    for (std::size_t i = 0; i < out.size(); ++i) {
        const double u = (double(i) - 2.0) * 0.16 * width;
        const int x = std::clamp(int(centre.x - u * along.y), 0, lab_.cols - 1);
        const int y = std::clamp(int(centre.y + u * along.x), 0, lab_.rows - 1);
        out.at(i) = lab_.at<cv::Vec3b>(y, x);
    }
    return out;
}

Seen Map::cell(int column, int row) const {
    return seen(told(column, row), column, row);
}

Seen Map::at(const Point& p) const {
    const double u = (p.x - 1.5) / 2.0;
    const double v = (p.y - 1.5) / 2.0;
    const int column = std::clamp(int(std::lround(u)), 0, columns() - 1);
    const int row = std::clamp(int(std::lround(v)), 0, rows() - 1);
    const Seen nearest = cell(column, row);
    double weight = 0.0;
    double wire = 0.0;
    Point centre;
    double c = 0.0;
    double s = 0.0;
    double width = 0.0;
    for (int j = std::max(0, int(std::floor(v))); j <= std::min(rows() - 1, int(std::floor(v)) + 1); ++j)
        for (int i = std::max(0, int(std::floor(u))); i <= std::min(columns() - 1, int(std::floor(u)) + 1);
             ++i) {
            const Cell corner = told(i, j);
            const Seen one = seen(corner, i, j);
            if (std::hypot(one.centre.x - nearest.centre.x, one.centre.y - nearest.centre.y) >
                0.35 * nearest.width + 2.0)
                continue;
            const double share = (1.0 - std::abs(u - i)) * (1.0 - std::abs(v - j)) * (0.05 + one.wire) + 1e-6;
            weight += share;
            wire += share * one.wire;
            centre.x += share * one.centre.x;
            centre.y += share * one.centre.y;
            c += share * corner.cos2;
            s += share * corner.sin2;
            width += share * one.width;
        }
    if (weight <= 0.0)
        return nearest;
    const double angle = 0.5 * std::atan2(s, c);
    return {wire / weight,
            {centre.x / weight, centre.y / weight},
            {std::cos(angle), std::sin(angle)},
            width / weight};
}

} // namespace undercowl::sight
