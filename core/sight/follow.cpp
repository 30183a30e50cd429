#include "core/sight/follow.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace undercowl::sight {
namespace {

constexpr double pi = std::numbers::pi;
constexpr std::array<double, 9> widths{6, 8, 11, 14, 18, 23, 29, 36, 46};
constexpr double weakest = 0.35;

struct Found {
    Piece piece;
    double score{};
};

// A stripe inside a wire has two sides as well: prefer the wider of two about as good.
double widthBonus(double width) {
    return 0.02 * std::log2(width / 6.0);
}

Found refine(const Edges& edges, Found found) {
    for (int round = 0; round < 2; ++round) {
        const Found start = found;
        for (int turn = -2; turn <= 2; ++turn)
            for (int shift = -2; shift <= 2; ++shift)
                for (int grow = -1; grow <= 1; ++grow) {
                    Piece piece = start.piece;
                    piece.angle += turn * 0.06;
                    piece.width *= 1.0 + 0.06 * grow;
                    piece.at.x -= shift * 0.07 * piece.width * std::sin(piece.angle);
                    piece.at.y += shift * 0.07 * piece.width * std::cos(piece.angle);
                    const double score = edges.sides(piece) + widthBonus(piece.width);
                    if (score > found.score)
                        found = {piece, score};
                }
    }
    return found;
}

// One step further along; nothing when the sides are lost.
std::optional<Piece> advance(const Edges& edges, const Piece& piece, double step) {
    Found best;
    for (int turn = -2; turn <= 2; ++turn) {
        const double angle = piece.angle + turn * 0.09;
        const double middle = piece.angle + turn * 0.045;
        for (int shift = -1; shift <= 1; ++shift) {
            const double u = shift * 0.08 * piece.width;
            const Piece next{{piece.at.x + step * std::cos(middle) - u * std::sin(angle),
                              piece.at.y + step * std::sin(middle) + u * std::cos(angle)},
                             angle,
                             piece.width};
            const double score = edges.sides(next) - 0.01 * std::abs(turn) - 0.01 * std::abs(shift);
            if (score > best.score)
                best = {next, score};
        }
    }
    if (best.score < weakest || !edges.contains(best.piece.at))
        return std::nullopt;
    return best.piece;
}

Tube follow(const Edges& edges, const Found& found) {
    Tube tube;
    tube.width = found.piece.width;
    tube.strength = std::clamp(found.score, 0.0, 1.0);
    const double step = std::max(1.5, 0.3 * tube.width);
    constexpr int most = 40;
    const auto run = [&](double forward) {
        Polyline line;
        Piece piece = found.piece;
        for (int i = 0; i < most; ++i) {
            const auto next = advance(edges, piece, forward * step);
            if (!next)
                break;
            piece = *next;
            line.push_back(piece.at);
        }
        return line;
    };
    tube.centre = run(-1.0);
    std::reverse(tube.centre.begin(), tube.centre.end());
    tube.centre.push_back(found.piece.at);
    const Polyline ahead = run(1.0);
    tube.centre.insert(tube.centre.end(), ahead.begin(), ahead.end());
    return tube;
}

Found bestPieceAt(const Edges& edges, const Point& at) {
    Found best;
    constexpr int turns = 12;
    for (const double width : widths)
        for (int turn = 0; turn < turns; ++turn) {
            const Piece piece{at, pi * turn / turns, width};
            const double score = edges.sides(piece) + widthBonus(width);
            if (score > best.score)
                best = {piece, score};
        }
    return best;
}

} // namespace

std::optional<Tube> findTube(const Edges& edges, const Point& p) {
    Found best;
    double bestWorth = 0.0;
    constexpr int reach = 36;
    for (int dy = -reach; dy <= reach; dy += 3)
        for (int dx = -reach; dx <= reach; dx += 3) {
            const double far = std::hypot(dx, dy);
            const Point at{p.x + dx, p.y + dy};
            if (far > reach || !edges.contains(at))
                continue;
            const Found found = bestPieceAt(edges, at);
            const double worth = found.score - 0.018 * std::max(0.0, far - 0.3 * found.piece.width);
            if (worth > bestWorth) {
                bestWorth = worth;
                best = found;
            }
        }
    if (best.score < weakest)
        return std::nullopt;
    return follow(edges, refine(edges, best));
}

std::vector<Crossing> findCrossings(const Edges& edges, const Polyline& along) {
    std::vector<Found> row; // the best piece at each pixel of the stroke
    for (std::size_t i = 1; i < along.size(); ++i) {
        const double length = std::hypot(along[i].x - along[i - 1].x, along[i].y - along[i - 1].y);
        const double stroke = std::atan2(along[i].y - along[i - 1].y, along[i].x - along[i - 1].x);
        for (double s = 0.0; s < length; s += 1.0) {
            const Point at{along[i - 1].x + s * std::cos(stroke), along[i - 1].y + s * std::sin(stroke)};
            Found best{{at, 0.0, 0.0}, 0.0};
            for (const double width : widths)
                for (int turn = -4; turn <= 4; ++turn) {
                    const Piece piece{at, stroke + pi / 2.0 + turn * 0.22, width};
                    const double score = edges.sides(piece) + widthBonus(width);
                    if (score > best.score)
                        best = {piece, score};
                }
            row.push_back(best);
        }
    }
    std::vector<std::size_t> order(row.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        order[i] = i;
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return row[a].score > row[b].score; });
    std::vector<std::size_t> kept;
    for (const std::size_t i : order) {
        if (row[i].score < 0.5)
            break;
        const bool apart = std::all_of(kept.begin(), kept.end(), [&](std::size_t other) {
            const double gap = std::hypot(row[i].piece.at.x - row[other].piece.at.x,
                                          row[i].piece.at.y - row[other].piece.at.y);
            return gap > 0.45 * (row[i].piece.width + row[other].piece.width);
        });
        if (apart)
            kept.push_back(i);
    }
    std::sort(kept.begin(), kept.end());
    std::vector<Crossing> crossings;
    crossings.reserve(kept.size());
    for (const std::size_t i : kept)
        crossings.push_back({follow(edges, refine(edges, row[i])), row[i].piece.at});
    return crossings;
}

} // namespace undercowl::sight
