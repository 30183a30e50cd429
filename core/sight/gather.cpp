#include "core/sight/gather.h"

#include "core/sight/covered.h"

#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <optional>
#include <utility>

namespace undercowl::sight {
namespace {

constexpr double plainly = 0.7;       // probability: following begins here
constexpr double likely = 0.5;        // probability: here is wire
constexpr double whole = 400.0;       // widths: to the end
constexpr double shortest = 5.0;      // widths; less is a stub, a terminal or a mistake
constexpr double shortestPatch = 4.0; // widths; of wire that was not followed: said sooner than proposed
constexpr double surely = 0.90;       // strength of a piece; latches and the rims of bolts stay below
constexpr double longestDive = 10.0;  // widths that a wire may be hidden for

// A washer, the edge of a hole: followed round and round.
bool isRing(const Tube& tube) {
    const auto [left, right] = std::minmax_element(tube.centre.begin(), tube.centre.end(),
                                                   [](const Point& p, const Point& q) { return p.x < q.x; });
    const auto [top, bottom] = std::minmax_element(tube.centre.begin(), tube.centre.end(),
                                                   [](const Point& p, const Point& q) { return p.y < q.y; });
    return std::hypot(right->x - left->x, bottom->y - top->y) < 0.4 * lengthOf(tube.centre);
}

// Pieces from everywhere, the longest first; a wire may be among them more than once.
std::vector<Tube> piecesOf(Fields& fields, const cv::Mat& lab, const std::function<bool()>& cancelled) {
    std::vector<Tube> pieces;
    Covered covered(fields.columns(), fields.rows());
    for (int row = 0; row < fields.rows(); ++row) {
        if (cancelled && cancelled())
            return {};
        for (int column = 0; column < fields.columns(); ++column) {
            const Cell cell = fields.cell(column, row);
            if (cell.wire < plainly || std::hypot(cell.dx, cell.dy) > 0.3 * cell.halfWidth + 0.7 ||
                covered.at(column, row))
                continue;
            Tube tube = followFrom(fields, lab, column, row, whole);
            covered.add(tube, 0.7);
            if (tube.strength >= surely && lengthOf(tube.centre) >= shortest * tube.width && !isRing(tube))
                pieces.push_back(std::move(tube));
        }
    }
    std::stable_sort(pieces.begin(), pieces.end(),
                     [](const Tube& a, const Tube& b) { return lengthOf(a.centre) > lengthOf(b.centre); });
    return pieces;
}

// One end of a piece.
struct End {
    std::size_t piece{};
    Point at;
    Point outward; // unit
    double width{};
    cv::Vec3f colour; // CIELAB in eight bits, of the last bit of the wire
};

End endOf(const Tube& tube, std::size_t piece, bool last, const cv::Mat& lab) {
    Polyline line = tube.centre;
    if (!last)
        std::reverse(line.begin(), line.end());
    std::size_t from = line.size() - 1;
    double travelled = 0.0;
    cv::Vec3f sum;
    float count = 0.0F;
    while (from > 0 && travelled < 3.0 * tube.width) {
        travelled += std::hypot(line[from].x - line[from - 1].x, line[from].y - line[from - 1].y);
        --from;
        sum += cv::Vec3f(lab.at<cv::Vec3b>(std::clamp(int(line[from].y), 0, lab.rows - 1),
                                           std::clamp(int(line[from].x), 0, lab.cols - 1)));
        count += 1.0F;
    }
    const Point d{line.back().x - line[from].x, line.back().y - line[from].y};
    const double length = std::max(1e-6, std::hypot(d.x, d.y));
    return {
        piece, line.back(), {d.x / length, d.y / length}, tube.width, sum * (1.0F / std::max(1.0F, count))};
}

// How two ends lie to each other.
struct Meeting {
    double width{};  // mean
    double apart{};  // in widths, as what follows
    double ahead{};  // of the one that is less ahead
    double asides{}; // sum of both
    double aside{};  // the greater
    double facing{}; // 1: they look straight at each other
    double unlike{}; // in colour, about Lab units
};

Meeting meetingOf(const End& a, const End& b) {
    const double width = 0.5 * (a.width + b.width);
    const Point gap{(b.at.x - a.at.x) / width, (b.at.y - a.at.y) / width};
    const double asideOfA = std::abs(gap.y * a.outward.x - gap.x * a.outward.y);
    const double asideOfB = std::abs(gap.y * b.outward.x - gap.x * b.outward.y);
    const cv::Vec3f colour = a.colour - b.colour;
    return {width,
            std::hypot(gap.x, gap.y),
            std::min(gap.x * a.outward.x + gap.y * a.outward.y, -gap.x * b.outward.x - gap.y * b.outward.y),
            asideOfA + asideOfB,
            std::max(asideOfA, asideOfB),
            -(a.outward.x * b.outward.x + a.outward.y * b.outward.y),
            std::sqrt(0.04 * double(colour[0]) * colour[0] + double(colour[1]) * colour[1] +
                      double(colour[2]) * colour[2])};
}

bool alikeIn(double width, double other) {
    return std::abs(std::log(width / other)) < 0.35;
}

// How far the one is from being the other's continuation; nothing when it is not.
std::optional<double> costOfJoining(const End& a, const End& b) {
    const Meeting m = meetingOf(a, b);
    if (m.apart > longestDive || m.facing < 0.8 || !alikeIn(a.width, b.width) || m.unlike > 18.0 ||
        m.ahead < -2.0 || m.aside > 0.6 + 0.3 * m.apart)
        return std::nullopt;
    return m.apart + 2.0 * m.asides + 0.3 * m.unlike + 10.0 * (1.0 - m.facing);
}

// The same where wires come out of a sleeve in another order: only that they look alike tells.
std::optional<double> costBeyondSleeve(const End& a, const End& b) {
    const Meeting m = meetingOf(a, b);
    if (m.apart > 20.0 || m.facing < 0.6 || !alikeIn(a.width, b.width) || m.unlike > 22.0 || m.ahead < 0.0 ||
        m.aside > 9.0)
        return std::nullopt;
    return m.unlike + 0.5 * m.aside;
}

struct Pair {
    double cost;
    std::size_t one;
    std::size_t other;
};

// Of ends of different pieces, the best first.
std::vector<Pair> pairsOf(const std::vector<End>& ends,
                          std::optional<double> (*cost)(const End&, const End&)) {
    std::vector<Pair> pairs;
    for (std::size_t i = 0; i < ends.size(); ++i)
        for (std::size_t j = i + 1; j < ends.size(); ++j)
            if (const auto price = ends[i].piece == ends[j].piece ? std::nullopt : cost(ends[i], ends[j]))
                pairs.push_back({*price, i, j});
    std::sort(pairs.begin(), pairs.end(), [](const Pair& a, const Pair& b) { return a.cost < b.cost; });
    return pairs;
}

// For each end, the end that goes on there.
using Joints = std::vector<std::optional<std::size_t>>;

Joints join(const std::vector<End>& ends) {
    Joints joints(ends.size());
    std::vector<std::size_t> chain(ends.size() / 2); // no wire is a ring
    std::iota(chain.begin(), chain.end(), std::size_t(0));
    for (const Pair& pair : pairsOf(ends, costOfJoining)) {
        const std::size_t kept = chain[pair.one / 2];
        const std::size_t gone = chain[pair.other / 2];
        if (joints[pair.one] || joints[pair.other] || kept == gone)
            continue;
        joints[pair.one] = pair.other;
        joints[pair.other] = pair.one;
        std::replace(chain.begin(), chain.end(), gone, kept);
    }
    return joints;
}

WholeWire chained(const std::vector<Tube>& pieces, const Joints& joints, std::size_t firstEnd,
                  std::vector<char>& used) {
    WholeWire wire;
    std::size_t longest = firstEnd / 2;
    std::optional<std::size_t> end = firstEnd;
    while (end) {
        const std::size_t piece = *end / 2;
        used[piece] = 1;
        Polyline line = pieces[piece].centre;
        if (*end % 2 == 1)
            std::reverse(line.begin(), line.end());
        wire.path.insert(wire.path.end(), line.begin(), line.end());
        longest = std::min(longest, piece); // they are in order of length
        end = joints[*end ^ std::size_t(1)];
    }
    wire.tube = pieces[longest];
    wire.tube.anchor = wire.tube.centre.size() / 2;
    return wire;
}

// Two ends for each piece: 2 i is where it begins, 2 i + 1 where it ends.
std::vector<WholeWire> chainsOf(const std::vector<Tube>& pieces, const cv::Mat& lab) {
    std::vector<End> ends;
    for (std::size_t i = 0; i < pieces.size(); ++i)
        for (const bool last : {false, true})
            ends.push_back(endOf(pieces[i], i, last, lab));
    const Joints joints = join(ends);
    std::vector<char> used(pieces.size());
    std::vector<WholeWire> wires;
    for (std::size_t end = 0; end < ends.size(); ++end)
        if (!joints[end] && used[end / 2] == 0)
            wires.push_back(chained(pieces, joints, end, used));
    return wires;
}

void orderAcross(std::vector<WholeWire>& wires) {
    double c = 0.0;
    double s = 0.0;
    for (const WholeWire& wire : wires)
        for (std::size_t i = 1; i < wire.path.size(); ++i) {
            const double dx = wire.path[i].x - wire.path[i - 1].x;
            const double dy = wire.path[i].y - wire.path[i - 1].y;
            const double length = std::max(1e-6, std::hypot(dx, dy));
            c += (dx * dx - dy * dy) / length;
            s += 2.0 * dx * dy / length;
        }
    const double angle = 0.5 * std::atan2(s, c);
    Point across{-std::sin(angle), std::cos(angle)};
    if ((std::abs(across.x) >= std::abs(across.y) ? across.x : across.y) < 0.0)
        across = {-across.x, -across.y};
    const auto place = [&](const WholeWire& wire) {
        const Point& p = wire.tube.centre[wire.tube.anchor];
        return p.x * across.x + p.y * across.y;
    };
    std::stable_sort(wires.begin(), wires.end(),
                     [&](const WholeWire& a, const WholeWire& b) { return place(a) < place(b); });
}

// Pairs those that may be the same wire on both sides of a sleeve, the shorter with the longer.
void pairBeyondSleeves(std::vector<WholeWire>& wires, const cv::Mat& lab) {
    std::vector<End> ends;
    for (std::size_t i = 0; i < wires.size(); ++i)
        for (const bool last : {false, true})
            ends.push_back(endOf({wires[i].path, 0, wires[i].tube.width, 1.0}, i, last, lab));
    std::vector<char> taken(wires.size());
    for (const Pair& pair : pairsOf(ends, costBeyondSleeve)) {
        std::size_t longer = pair.one / 2;
        std::size_t shorter = pair.other / 2;
        if (taken[longer] != 0 || taken[shorter] != 0)
            continue;
        if (lengthOf(wires[longer].path) < lengthOf(wires[shorter].path))
            std::swap(longer, shorter);
        taken[longer] = taken[shorter] = 1;
        wires[shorter].perhaps = longer;
    }
}

// The middle of each patch of wire that nothing covers and that is long enough to be one.
std::vector<Point> unfollowedIn(Fields& fields, const Covered& covered) {
    cv::Mat open = cv::Mat::zeros(fields.rows(), fields.columns(), CV_8UC1);
    cv::Mat wire(fields.rows(), fields.columns(), CV_32FC1);
    for (int row = 0; row < fields.rows(); ++row)
        for (int column = 0; column < fields.columns(); ++column) {
            wire.at<float>(row, column) = fields.cell(column, row).wire;
            if (wire.at<float>(row, column) >= likely && !covered.at(column, row))
                open.at<uchar>(row, column) = 255;
        }
    cv::Mat labels;
    cv::Mat stats;
    cv::Mat middles;
    const int patches = cv::connectedComponentsWithStats(open, labels, stats, middles);
    std::vector<Point> places;
    for (int i = 1; i < patches; ++i) {
        const Point middle{2.0 * middles.at<double>(i, 0) + 1.5, 2.0 * middles.at<double>(i, 1) + 1.5};
        const int column = std::clamp(int(middles.at<double>(i, 0)), 0, fields.columns() - 1);
        const int row = std::clamp(int(middles.at<double>(i, 1)), 0, fields.rows() - 1);
        const double width = fields.cell(column, row).halfWidth; // in cells that is the whole width
        if (stats.at<int>(i, cv::CC_STAT_AREA) > shortestPatch * width * width &&
            cv::mean(wire, labels == i)[0] >= plainly)
            places.push_back(middle);
    }
    return places;
}

} // namespace

Gathered gatherWires(Fields& fields, const cv::Mat& lab, const std::function<bool()>& cancelled) {
    fields.workAll(cancelled);
    if (cancelled && cancelled())
        return {};
    std::vector<Tube> kept;
    Covered covered(fields.columns(), fields.rows());
    for (Tube& piece : piecesOf(fields, lab, cancelled)) {
        if (covered.shareOf(piece.centre) > 0.5)
            continue; // known already, by a longer piece
        covered.add(piece, 1.0);
        kept.push_back(std::move(piece));
    }
    Gathered all{chainsOf(kept, lab), {}};
    for (const WholeWire& wire : all.wires)
        covered.add({wire.path, 0, wire.tube.width, wire.tube.strength}, 1.4);
    all.unfollowed = unfollowedIn(fields, covered);
    orderAcross(all.wires);
    pairBeyondSleeves(all.wires, lab);
    return all;
}

std::vector<WholeWire> fromMouth(std::vector<WholeWire> wires, const Polyline& mouth) {
    constexpr double pointsAt = 8.0; // widths by which a wire may stop short of its connector
    constexpr double near = 2.0;     // widths
    struct Placed {
        double along;
        WholeWire wire;
    };
    std::vector<Placed> placed;
    for (WholeWire& wire : wires) {
        const double width = wire.tube.width;
        Polyline path = wire.path;
        for (int end = 0; end < 2; ++end) { // either end, a little further on
            std::reverse(path.begin(), path.end());
            const Point& tip = path.back();
            const Point& before = path[path.size() - std::min<std::size_t>(path.size(), 6)];
            const double length = std::max(1e-6, std::hypot(tip.x - before.x, tip.y - before.y));
            path.push_back({tip.x + (tip.x - before.x) / length * pointsAt * width,
                            tip.y + (tip.y - before.y) / length * pointsAt * width});
        }
        double nearest = near * width;
        double along = -1.0;
        double passed = 0.0;
        for (std::size_t i = 1; i < mouth.size(); ++i) {
            const double length = std::hypot(mouth[i].x - mouth[i - 1].x, mouth[i].y - mouth[i - 1].y);
            for (double t = 0.0; t <= length; t += 1.0) {
                const double share = t / std::max(1e-6, length);
                const Point p{mouth[i - 1].x + share * (mouth[i].x - mouth[i - 1].x),
                              mouth[i - 1].y + share * (mouth[i].y - mouth[i - 1].y)};
                const double away = distanceTo(path, p);
                if (away < nearest) {
                    nearest = away;
                    along = passed + t;
                }
            }
            passed += length;
        }
        wire.perhaps.reset(); // the far side of a sleeve is out of reach
        if (along >= 0.0)
            placed.push_back({along, std::move(wire)});
    }
    std::stable_sort(placed.begin(), placed.end(),
                     [](const Placed& a, const Placed& b) { return a.along < b.along; });
    std::vector<WholeWire> ordered;
    ordered.reserve(placed.size());
    for (Placed& one : placed)
        ordered.push_back(std::move(one.wire));
    return ordered;
}

} // namespace undercowl::sight
