#include "core/sight/follow.h"

#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>

namespace undercowl::sight {
namespace {

// What the fields say of the wire at a place.
struct Seen {
    double wire{};  // probability
    Point centre;   // nearest point of the centre line
    Point along;    // unit direction; which of the two ways is arbitrary
    double width{}; // pixels
};

enum class From { Near, Afar };

class Map {
public:
    Map(Fields& fields, const cv::Mat& lab, From from = From::Near)
        : fields_(fields), lab_(lab), from_(from) {}

    // Five colours across the wire, its rims left out.
    using Section = std::array<cv::Vec3f, 5>;
    [[nodiscard]] Section section(const Point& centre, const Point& along, double width) const {
        Section out;
        for (std::size_t i = 0; i < out.size(); ++i) {
            const double u = (double(i) - 2.0) * 0.16 * width;
            const int x = std::clamp(int(centre.x - u * along.y), 0, lab_.cols - 1);
            const int y = std::clamp(int(centre.y + u * along.x), 0, lab_.rows - 1);
            out.at(i) = lab_.at<cv::Vec3b>(y, x);
        }
        return out;
    }

    [[nodiscard]] int columns() const { return fields_.columns(); }
    [[nodiscard]] int rows() const { return fields_.rows(); }
    static Point placeOf(int column, int row) { return {2.0 * column + 1.5, 2.0 * row + 1.5}; }
    [[nodiscard]] double wireAt(int column, int row) const { return told(column, row).wire; }

    [[nodiscard]] Seen cell(int column, int row) const { return seen(told(column, row), column, row); }

    // The mean of the four cells around p, of those that speak of the same wire as the nearest.
    [[nodiscard]] Seen at(const Point& p) const {
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
            for (int i = std::max(0, int(std::floor(u)));
                 i <= std::min(columns() - 1, int(std::floor(u)) + 1); ++i) {
                const Cell corner = told(i, j);
                const Seen one = seen(corner, i, j);
                if (std::hypot(one.centre.x - nearest.centre.x, one.centre.y - nearest.centre.y) >
                    0.35 * nearest.width + 2.0)
                    continue;
                const double share =
                    (1.0 - std::abs(u - i)) * (1.0 - std::abs(v - j)) * (0.05 + one.wire) + 1e-6;
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

    [[nodiscard]] bool contains(const Point& p) const {
        return p.x >= 0.0 && p.y >= 0.0 && p.x < 2.0 * columns() && p.y < 2.0 * rows();
    }

private:
    [[nodiscard]] Cell told(int column, int row) const {
        return from_ == From::Near ? fields_.cell(column, row) : fields_.cellFromAfar(column, row);
    }
    static Seen seen(const Cell& told, int column, int row) {
        const double angle = 0.5 * std::atan2(double(told.sin2), double(told.cos2));
        const Point place = placeOf(column, row);
        return {told.wire,
                {place.x + told.dx, place.y + told.dy},
                {std::cos(angle), std::sin(angle)},
                2.0 * told.halfWidth};
    }
    Fields& fields_;
    const cv::Mat& lab_;
    From from_;
};

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

constexpr double onWire = 0.5;      // probability
constexpr double stillOnWire = 0.4; // while it is followed

double dot(const Point& a, const Point& b) {
    return a.x * b.x + a.y * b.y;
}

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

Tube follow(const Map& map, Seen start, double most = followedWidths) {
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

Polyline pixelByPixel(const Polyline& along) {
    Polyline out{along.front()};
    for (std::size_t i = 0; i + 1 < along.size(); ++i) {
        const double length = std::hypot(along[i + 1].x - along[i].x, along[i + 1].y - along[i].y);
        const int steps = std::max(1, int(std::ceil(length)));
        for (int k = 1; k <= steps; ++k) {
            const double t = double(k) / steps;
            out.push_back({along[i].x + t * (along[i + 1].x - along[i].x),
                           along[i].y + t * (along[i + 1].y - along[i].y)});
        }
    }
    return out;
}

} // namespace

double distanceTo(const Polyline& line, const Point& p) {
    double least = 1e9;
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        const Point e{line[i + 1].x - line[i].x, line[i + 1].y - line[i].y};
        const Point d{p.x - line[i].x, p.y - line[i].y};
        const double t = std::clamp(dot(d, e) / std::max(1e-9, dot(e, e)), 0.0, 1.0);
        least = std::min(least, std::hypot(d.x - t * e.x, d.y - t * e.y));
    }
    return line.size() == 1 ? std::hypot(line[0].x - p.x, line[0].y - p.y) : least;
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

namespace {

// Where a stroke stands with the wire underneath it.
struct Underneath {
    Seen seen;
    double toCentre{}; // pixels that its centre line still lies ahead, across it
    bool across{};     // the stroke runs across it, not along it
};

Underneath underneath(const Map& map, const Point& p, const Point& next) {
    Underneath here{map.at(p)};
    const Point ahead{next.x - p.x, next.y - p.y};
    Point normal{-here.seen.along.y, here.seen.along.x};
    double slant = dot(normal, ahead) / std::max(1e-9, std::hypot(ahead.x, ahead.y));
    if (slant < 0.0) {
        normal = {-normal.x, -normal.y};
        slant = -slant;
    }
    here.across = slant >= 0.15;
    here.toCentre = dot({here.seen.centre.x - p.x, here.seen.centre.y - p.y}, normal);
    return here;
}

struct Met {
    Tube tube;
    std::size_t place{}; // on the stroke, pixels from its start
};

// Wires that the stroke crosses by one map, but those that do not lie clear of the ones that are 'known'.
std::vector<Met> crossingsOf(const Map& map, const Polyline& stroke, const std::vector<Met>& known) {
    std::vector<Met> crossings;
    const auto cross = [&](const Seen& seen, std::size_t place) {
        const auto covers = [&](const Met& one) {
            return distanceTo(one.tube.centre, seen.centre) < 0.4 * (one.tube.width + seen.width);
        };
        if (std::any_of(known.begin(), known.end(), covers))
            return;
        Tube tube = follow(map, seen);
        const bool again = std::any_of(crossings.begin(), crossings.end(), [&](const Met& other) {
            return distanceTo(other.tube.centre, seen.centre) < 0.3 * tube.width;
        });
        if (!again)
            crossings.push_back({std::move(tube), place});
    };
    // A finger that is put down or lifted on a wire, not quite over its middle, means that wire too.
    constexpr double nearly = 0.25; // of the width
    bool armed = false;             // the centre line of the wire underneath still lies ahead
    for (std::size_t i = 0; i + 1 < stroke.size(); ++i) {
        const Underneath here = underneath(map, stroke[i], stroke[i + 1]);
        if (here.seen.wire < onWire) {
            armed = false;
            continue;
        }
        if (!here.across)
            continue;
        const bool first = i == 0 && here.toCentre > -nearly * here.seen.width;
        if (here.toCentre > 0.15 * here.seen.width || first)
            armed = true;
        const bool last = i + 2 == stroke.size() && here.toCentre < nearly * here.seen.width;
        if (armed && (here.toCentre <= 0.0 || last)) {
            armed = false;
            cross(here.seen, i);
        }
    }
    return crossings;
}

} // namespace

std::vector<Crossing> findCrossings(Fields& fields, const cv::Mat& lab, const Polyline& along) {
    const Polyline stroke = pixelByPixel(along);
    std::vector<Met> met = crossingsOf(Map(fields, lab), stroke, {});
    // From further away only what lies clear of all that was met.
    std::vector<Met> afar = crossingsOf(Map(fields, lab, From::Afar), stroke, met);
    std::move(afar.begin(), afar.end(), std::back_inserter(met));
    std::stable_sort(met.begin(), met.end(), [](const Met& a, const Met& b) { return a.place < b.place; });
    std::vector<Crossing> crossings;
    crossings.reserve(met.size());
    for (Met& one : met)
        crossings.push_back({std::move(one.tube), stroke[one.place]});
    return crossings;
}

} // namespace undercowl::sight
