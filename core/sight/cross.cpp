#include "core/sight/cross.h"

#include "core/sight/covered.h"
#include "core/sight/map.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <optional>

namespace undercowl::sight {
namespace {

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

// How far a place lies from the nearest of these wires: 1 where a wire of this width would touch it side by
// side.
double clearOf(const std::vector<Met>& wires, const Point& place, double width) {
    double least = 1e9;
    for (const Met& one : wires)
        least = std::min(least, distanceTo(one.tube.centre, place) / (0.5 * (one.tube.width + width)));
    return least;
}

// What is not plainly wire and not followed for so many widths is a gap or the rim of a housing rather than a
// wire. Chosen on strokes over rendered photos and beside them, where up to 2.6 does as well; slivers of
// wires are short, so the least that serves is taken.
constexpr double plainly = 0.8; // strength
constexpr double doubtful = 1.65;

// Wires that the stroke crosses by one map, but those that do not lie clear of the ones that are 'known', nor
// those that are not at least so many widths long.
std::vector<Met> crossingsOf(const Map& map, const Polyline& stroke, const std::vector<Met>& known,
                             double shortest) {
    std::vector<Met> crossings;
    const auto cross = [&](const Seen& seen, std::size_t place) {
        if (clearOf(known, seen.centre, seen.width) < 0.8)
            return;
        Tube tube = follow(map, seen);
        const double least = tube.strength < plainly ? std::max(shortest, doubtful) : shortest;
        if (lengthOf(tube.centre) < least * tube.width)
            return;
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

// Wires that the stroke touches only beside their centre lines, since others hide those there: what is wire
// under the stroke and none of the 'known'. A shadow or a rim beside a wire is followed along that wire or
// not far.
std::vector<Met> partlyHidden(const Map& map, const Polyline& stroke, const std::vector<Met>& known) {
    constexpr double shortest = 2.0;     // widths
    constexpr double clear = 0.6;        // as from clearOf()
    constexpr double mostOnOthers = 0.6; // of what was followed
    Covered covered(map.columns(), map.rows());
    for (const Met& one : known)
        covered.add(one.tube, 1.0);
    std::vector<Met> found;
    std::vector<std::size_t> stretch; // pixels of the stroke
    std::optional<Seen> middle;       // what is seen there closest to a centre line
    double least = 0.0;               // from there to it, pixels
    const auto close = [&] {
        if (!middle)
            return;
        Tube tube = follow(map, *middle);
        const Point& place = tube.centre[tube.anchor];
        if (lengthOf(tube.centre) >= shortest * tube.width && clearOf(known, place, tube.width) >= clear &&
            clearOf(found, place, tube.width) >= clear && covered.shareOf(tube.centre) <= mostOnOthers)
            found.push_back({std::move(tube), stretch[stretch.size() / 2]});
        middle.reset();
        stretch.clear();
    };
    for (std::size_t i = 0; i + 1 < stroke.size(); ++i) {
        if (covered.at(stroke[i])) {
            close();
            continue;
        }
        const Underneath here = underneath(map, stroke[i], stroke[i + 1]);
        if (here.seen.wire < onWire) {
            close();
            continue;
        }
        if (!here.across)
            continue;
        stretch.push_back(i);
        if (!middle || std::abs(here.toCentre) < least) {
            middle = here.seen;
            least = std::abs(here.toCentre);
        }
    }
    close();
    return found;
}

} // namespace

std::vector<Crossing> findCrossings(Fields& fields, const cv::Mat& lab, const Polyline& along) {
    const Polyline stroke = pixelByPixel(along);
    std::vector<Met> met = crossingsOf(Map(fields, lab), stroke, {}, 0.0);
    const auto add = [&met](std::vector<Met> more) {
        std::move(more.begin(), more.end(), std::back_inserter(met));
    };
    add(partlyHidden(Map(fields, lab), stroke, met));
    // From further away only what lies clear of all that was met, and is longer than wide: a gap is not.
    constexpr double longerThanWide = 1.25;
    add(crossingsOf(Map(fields, lab, From::Afar), stroke, met, longerThanWide));
    std::stable_sort(met.begin(), met.end(), [](const Met& a, const Met& b) { return a.place < b.place; });
    std::vector<Crossing> crossings;
    crossings.reserve(met.size());
    for (Met& one : met)
        crossings.push_back({std::move(one.tube), stroke[one.place]});
    return crossings;
}

} // namespace undercowl::sight
