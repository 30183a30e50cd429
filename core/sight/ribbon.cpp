#include "core/sight/ribbon.h"

#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <cmath>

namespace undercowl::sight {
namespace {

constexpr int lean = 12;         // slopes tried to either side
constexpr double leanStep = 0.1; // columns for each row
constexpr int window = 6;        // rows over which an edge must hold together
constexpr double faintest = 0.7; // Lab units a pixel
constexpr double holds = 0.3;    // share of its strength at which an edge is still followed

cv::Vec3f gradientAt(const cv::Mat& gradient, double column, int row) {
    const int left = static_cast<int>(std::floor(column));
    if (left < 0 || left + 1 >= gradient.cols || row < 0 || row >= gradient.rows)
        return {0, 0, 0};
    const float share = static_cast<float>(column - left);
    return gradient.at<cv::Vec3f>(row, left) * (1.0F - share) + gradient.at<cv::Vec3f>(row, left + 1) * share;
}

cv::Mat gradientAlong(const cv::Mat& lab) {
    cv::Mat gradient;
    const cv::Mat kernel = (cv::Mat_<float>(1, 3) << -0.5F, 0.0F, 0.5F);
    cv::filter2D(lab, gradient, CV_32F, kernel, {-1, -1}, 0, cv::BORDER_REPLICATE);
    return gradient;
}

// The edge through one column of the stroke. The changes are added as vectors: where they point different
// ways there is texture and no edge.
RibbonEdge edgeAt(const cv::Mat& gradient, int reach, int column) {
    RibbonEdge best;
    best.at = column;
    for (int turn = -lean; turn <= lean; ++turn) {
        const double slope = turn * leanStep;
        cv::Vec3f sum{0, 0, 0};
        for (int t = -window; t <= window; ++t)
            sum += gradientAt(gradient, column + slope * t, reach + t);
        const double strength = cv::norm(sum) / (2 * window + 1);
        if (strength > best.strength) {
            best.strength = strength;
            best.slope = slope;
            best.step = sum * (1.0F / (2 * window + 1));
        }
    }
    return best;
}

// Goes on from the stroke to one side for as long as the same change of colour is there.
std::vector<float> followEdge(const cv::Mat& gradient, const RibbonEdge& edge, int reach, int direction) {
    std::vector<float> path;
    const cv::Vec3f unit = edge.step * static_cast<float>(1.0 / std::max(1e-6, cv::norm(edge.step)));
    double at = edge.at;
    double slope = edge.slope;
    int lost = 0;
    for (int t = 1; t < reach && lost < 5; ++t) {
        const double wanted = at + slope * direction;
        double best = -1e9;
        double bestAt = wanted;
        for (double shift = -1.5; shift <= 1.5; shift += 0.5) {
            const double change = gradientAt(gradient, wanted + shift, reach + direction * t).dot(unit);
            const double worth = change - 0.12 * edge.strength * std::abs(shift);
            if (worth > best) {
                best = worth;
                bestAt = wanted + shift;
            }
        }
        const bool seen = best > holds * edge.strength;
        lost = seen ? 0 : lost + 1;
        if (seen) {
            slope = 0.85 * slope + 0.15 * (bestAt - at) * direction;
            at = 0.4 * wanted + 0.6 * bestAt;
        } else {
            at = wanted;
        }
        slope = std::clamp(slope, -2.0, 2.0);
        path.push_back(static_cast<float>(at));
    }
    path.resize(path.size() - static_cast<std::size_t>(std::min<int>(lost, static_cast<int>(path.size()))));
    return path;
}

void followBothWays(const cv::Mat& gradient, RibbonEdge& edge, int reach) {
    std::vector<float> up = followEdge(gradient, edge, reach, -1);
    const std::vector<float> down = followEdge(gradient, edge, reach, 1);
    edge.first = -static_cast<int>(up.size());
    edge.last = static_cast<int>(down.size());
    edge.path.assign(up.rbegin(), up.rend());
    edge.path.push_back(static_cast<float>(edge.at));
    edge.path.insert(edge.path.end(), down.begin(), down.end());
}

} // namespace

cv::Mat smoothLab(const cv::Mat& rgb) {
    cv::Mat lab;
    rgb.convertTo(lab, CV_32F, 1.0 / 255.0);
    cv::cvtColor(lab, lab, cv::COLOR_RGB2Lab);
    cv::GaussianBlur(lab, lab, {0, 0}, 1.0);
    return lab;
}

Point Ribbon::toPicture(double along, double across) const {
    std::size_t part = 0;
    while (part + 1 < angles.size() && along > turns[part + 1])
        ++part;
    const double s = along - turns[part];
    const double c = std::cos(angles[part]);
    const double n = std::sin(angles[part]);
    return {stroke[part].x + s * c - across * n, stroke[part].y + s * n + across * c};
}

double Ribbon::angleAt(double along) const {
    std::size_t part = 0;
    while (part + 1 < angles.size() && along > turns[part + 1])
        ++part;
    return angles[part];
}

Ribbon ribbonAlong(const cv::Mat& lab, const Polyline& stroke, int reach) {
    Ribbon ribbon;
    ribbon.reach = reach;
    ribbon.stroke = stroke;
    double length = 0.0;
    for (std::size_t i = 1; i < stroke.size(); ++i) {
        ribbon.turns.push_back(length);
        ribbon.angles.push_back(std::atan2(stroke[i].y - stroke[i - 1].y, stroke[i].x - stroke[i - 1].x));
        length += std::hypot(stroke[i].x - stroke[i - 1].x, stroke[i].y - stroke[i - 1].y);
    }
    const int columns = std::max(2, static_cast<int>(length) + 1);
    cv::Mat mapX(2 * reach + 1, columns, CV_32F);
    cv::Mat mapY(2 * reach + 1, columns, CV_32F);
    for (int row = 0; row < mapX.rows; ++row)
        for (int column = 0; column < columns; ++column) {
            const Point p = ribbon.toPicture(column, row - reach);
            mapX.at<float>(row, column) = static_cast<float>(p.x);
            mapY.at<float>(row, column) = static_cast<float>(p.y);
        }
    cv::remap(lab, ribbon.lab, mapX, mapY, cv::INTER_LINEAR, cv::BORDER_REPLICATE);
    return ribbon;
}

std::vector<RibbonEdge> edgesOf(const Ribbon& ribbon) {
    const cv::Mat gradient = gradientAlong(ribbon.lab);
    std::vector<RibbonEdge> all;
    all.reserve(static_cast<std::size_t>(ribbon.lab.cols));
    for (int column = 0; column < ribbon.lab.cols; ++column)
        all.push_back(edgeAt(gradient, ribbon.reach, column));
    std::vector<RibbonEdge> edges;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const double strength = all[i].strength;
        bool peak = strength >= faintest;
        for (std::size_t near = i < 2 ? 0 : i - 2; near <= i + 2 && near < all.size() && peak; ++near)
            peak = near == i || all[near].strength < strength || (all[near].strength == strength && near > i);
        if (!peak)
            continue;
        edges.push_back(all[i]);
        followBothWays(gradient, edges.back(), ribbon.reach);
    }
    return edges;
}

} // namespace undercowl::sight
