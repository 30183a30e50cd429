#include "core/sight/follow.h"

#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <array>
#include <cmath>

namespace undercowl::sight {
namespace {

// The colours that were seen on a wire so far. A tracer that winds out of sight changes what a section shows,
// but where another wire lies across, everything in it is strange.
class Look {
public:
    void add(const Map::Section& section) {
        for (const cv::Vec3f& colour : section)
            colours_.push_back(colour);
    }

    // Whether the section belongs to the same wire; what is known again is remembered as it looks there.
    [[nodiscard]] bool knowsAgain(const Map::Section& section) {
        const std::size_t before = colours_.size();
        for (const cv::Vec3f& colour : section)
            if (std::any_of(colours_.begin(), colours_.begin() + std::ptrdiff_t(before),
                            [&](const cv::Vec3f& known) { return apart(colour, known) < likeness; }))
                colours_.push_back(colour);
        return colours_.size() - before >= 3;
    }

private:
    static constexpr double likeness = 16.0; // about Lab units
    // Light and shade change along a wire, its hue does not.
    static double apart(const cv::Vec3f& a, const cv::Vec3f& b) {
        const double lightness = 0.45 * (a[0] - b[0]) / 2.55;
        return std::sqrt(lightness * lightness + (a[1] - b[1]) * (a[1] - b[1]) +
                         (a[2] - b[2]) * (a[2] - b[2]));
    }
    std::vector<cv::Vec3f> colours_;
};

// Steps from a place of the centre line along the wire until it ends, dives under another, or is as many
// widths long as wished.
void followOneWay(const Map& map, const Seen& start, Point along, double most, Look look, Polyline& out,
                  std::vector<double>& widths, double& strength) {
    const double width = start.width;
    const double step = std::max(1.5, 0.25 * width);
    const int steps = int(most * width / step) + 1;
    Point p = start.centre;
    double w = width;
    for (int i = 0; i < steps; ++i) {
        const Point ahead{p.x + along.x * step, p.y + along.y * step};
        if (!map.contains(ahead))
            return;
        const Seen seen = map.at(ahead);
        if (seen.wire < stillOnWire || std::abs(std::log(seen.width / w)) > 0.45)
            return;
        const Point normal{-along.y, along.x};
        const double aside = dot({seen.centre.x - ahead.x, seen.centre.y - ahead.y}, normal);
        if (std::abs(aside) > 0.35 * w + 0.5)
            return; // another wire's centre line
        Point next = seen.along;
        if (dot(next, along) < 0.0)
            next = {-next.x, -next.y};
        if (dot(next, along) < 0.80) // turned by more than 37 degrees: what lies across
            return;
        p = {ahead.x + normal.x * aside, ahead.y + normal.y * aside};
        along = {0.5 * (along.x + next.x), 0.5 * (along.y + next.y)};
        const double length = std::hypot(along.x, along.y);
        along = {along.x / length, along.y / length};
        if (!look.knowsAgain(map.section(p, along, start.width)))
            return;
        w += 0.3 * (seen.width - w);
        out.push_back(p);
        widths.push_back(seen.width);
        strength += seen.wire;
    }
}

Polyline smoothed(const Polyline& line) {
    Polyline out = line;
    for (int round = 0; round < 2; ++round) {
        const Polyline from = out;
        for (std::size_t i = 1; i + 1 < from.size(); ++i)
            out[i] = {(from[i - 1].x + 2.0 * from[i].x + from[i + 1].x) / 4.0,
                      (from[i - 1].y + 2.0 * from[i].y + from[i + 1].y) / 4.0};
    }
    return out;
}

// How surely the finder sees a wire so many widths to either side of where the following began, mean. What it
// sees further away says nothing of the place that was tapped.
double wireNearby(const Map& map, const Tube& tube, double widths) {
    double sum = 0.0;
    double places = 0.0;
    const auto walk = [&](std::size_t from, std::ptrdiff_t way) {
        double walked = 0.0;
        for (std::size_t i = from; i < tube.centre.size(); i += std::size_t(way)) { // wraps below 0
            const Point& before = tube.centre[i == tube.anchor ? i : i - std::size_t(way)];
            walked += std::hypot(tube.centre[i].x - before.x, tube.centre[i].y - before.y);
            if (walked > widths * tube.width)
                return;
            sum += map.at(tube.centre[i]).wire;
            places += 1.0;
        }
    };
    walk(tube.anchor, 1);
    walk(tube.anchor - 1, -1);
    return sum / places;
}

// Whether within so many pixels of p there is a wire with another centre line.
bool anotherWithin(const Map& map, const Tube& tube, const Point& p, double reach) {
    const auto cells = [](double pixels) { return int((pixels - 1.5) / 2.0); };
    for (int j = std::max(0, cells(p.y - reach)); j <= std::min(map.rows() - 1, cells(p.y + reach) + 1); ++j)
        for (int i = std::max(0, cells(p.x - reach));
             i <= std::min(map.columns() - 1, cells(p.x + reach) + 1); ++i) {
            const Point place = Map::placeOf(i, j);
            if (std::hypot(place.x - p.x, place.y - p.y) <= reach && map.wireAt(i, j) >= onWire &&
                distanceTo(tube.centre, map.cell(i, j).centre) >= 0.5 * tube.width)
                return true;
        }
    return false;
}

} // namespace

bool hardlySeen(Fields& fields, const cv::Mat& lab, const Tube& tube) {
    constexpr double nearby = 6.0; // widths
    constexpr double weak = 0.91;  // probability
    return wireNearby(Map(fields, lab), tube, nearby) < weak;
}

bool mayMeanAnother(Fields& fields, const cv::Mat& lab, const Tube& tube, const Point& p) {
    constexpr double onBorder = 0.1; // widths
    constexpr double next = 0.7;
    constexpr double offMiddle = 0.1;
    const double away = distanceTo(tube.centre, p);
    if (away > 0.5 * tube.width)
        return true;
    const Map map(fields, lab);
    return anotherWithin(map, tube, p, onBorder * tube.width) ||
           (away > offMiddle * tube.width && anotherWithin(map, tube, p, next * tube.width) &&
            hardlySeen(fields, lab, tube));
}

Tube follow(const Map& map, Seen start, double most) {
    // The centre line's own cell knows it best.
    for (int i = 0; i < 2; ++i) {
        const Seen centred = map.at(start.centre);
        if (centred.wire < stillOnWire || std::hypot(centred.centre.x - start.centre.x,
                                                     centred.centre.y - start.centre.y) > 0.3 * start.width)
            break;
        start = centred;
    }
    Polyline back;
    Polyline forth;
    std::vector<double> widths{start.width};
    double strength = start.wire;
    Look look;
    for (const double at : {-0.4, 0.0, 0.4})
        look.add(map.section({start.centre.x + at * start.width * start.along.x,
                              start.centre.y + at * start.width * start.along.y},
                             start.along, start.width));
    followOneWay(map, start, {-start.along.x, -start.along.y}, most, look, back, widths, strength);
    followOneWay(map, start, start.along, most, look, forth, widths, strength);
    Tube tube;
    tube.anchor = back.size();
    tube.centre.assign(back.rbegin(), back.rend());
    tube.centre.push_back(start.centre);
    tube.centre.insert(tube.centre.end(), forth.begin(), forth.end());
    tube.centre = smoothed(tube.centre);
    tube.strength = strength / double(widths.size());
    const auto middle = widths.begin() + std::ptrdiff_t(widths.size() / 2);
    std::nth_element(widths.begin(), middle, widths.end());
    tube.width = *middle;
    return tube;
}

double distanceTo(const Polyline& line, const Point& p) {
    double least = 1e18; // squared
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        const Point e{line[i + 1].x - line[i].x, line[i + 1].y - line[i].y};
        const Point d{p.x - line[i].x, p.y - line[i].y};
        const double t = std::clamp(dot(d, e) / std::max(1e-9, dot(e, e)), 0.0, 1.0);
        const Point away{d.x - t * e.x, d.y - t * e.y};
        least = std::min(least, dot(away, away));
    }
    return line.size() == 1 ? std::hypot(line[0].x - p.x, line[0].y - p.y) : std::sqrt(least);
}

double lengthOf(const Polyline& line) {
    double length = 0.0;
    for (std::size_t i = 1; i < line.size(); ++i)
        length += std::hypot(line[i].x - line[i - 1].x, line[i].y - line[i - 1].y);
    return length;
}

cv::Mat smoothLab(const cv::Mat& rgb) {
    cv::Mat smooth;
    cv::GaussianBlur(rgb, smooth, {0, 0}, 1.0);
    cv::Mat lab;
    cv::cvtColor(smooth, lab, cv::COLOR_RGB2Lab);
    return lab;
}

std::optional<Tube> findTube(Fields& fields, const cv::Mat& lab, const Point& p) {
    const Map map(fields, lab);
    constexpr double reach = 60.0; // pixels of the working picture
    const int column = int((p.x - 1.5) / 2.0);
    const int row = int((p.y - 1.5) / 2.0);
    const Map afar(fields, lab, From::Afar);
    const int c = std::clamp(column, 0, map.columns() - 1);
    const int r = std::clamp(row, 0, map.rows() - 1);
    if (map.wireAt(c, r) < onWire && afar.wireAt(c, r) >= onWire)
        return follow(afar, afar.cell(c, r));
    const int cells = int(reach / 2.0) + 1;
    double best = reach;
    std::optional<Seen> start;
    for (int j = std::max(0, row - cells); j <= std::min(map.rows() - 1, row + cells); ++j)
        for (int i = std::max(0, column - cells); i <= std::min(map.columns() - 1, column + cells); ++i) {
            if (map.wireAt(i, j) < onWire)
                continue;
            const Point place = Map::placeOf(i, j);
            const double away = std::hypot(place.x - p.x, place.y - p.y);
            if (away < best) {
                best = away;
                start = map.cell(i, j);
            }
        }
    if (!start)
        return std::nullopt;
    return follow(map, *start);
}

Tube followFrom(Fields& fields, const cv::Mat& lab, int column, int row, double widths) {
    const Map map(fields, lab);
    return follow(map, map.cell(column, row), widths);
}

} // namespace undercowl::sight
