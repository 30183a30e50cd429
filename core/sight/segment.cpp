#include "core/sight/segment.h"

#include <algorithm>
#include <cmath>

namespace undercowl::sight {
namespace {

constexpr double thinnest = 4.0;
constexpr double thickest = 70.0;
constexpr std::size_t mostBetween = 9; // edges inside a wire: its tracer, its highlights

struct Sides {
    int first{};
    int last{};
    double meanWidth{};
    double widthSpread{}; // standard deviation for the mean
    double taper{};       // change of width over the length, for the mean
};

float columnAt(const RibbonEdge& edge, int row) {
    return edge.path[static_cast<std::size_t>(row - edge.first)];
}

Sides sidesOf(const RibbonEdge& a, const RibbonEdge& b, int most) {
    Sides sides;
    sides.first = std::max({a.first, b.first, -most});
    sides.last = std::min({a.last, b.last, most});
    double n = 0;
    double sum = 0;
    double squares = 0;
    double rows = 0;
    double rowSquares = 0;
    double mixed = 0;
    for (int row = sides.first; row <= sides.last; ++row) {
        const double width = columnAt(b, row) - columnAt(a, row);
        n += 1;
        sum += width;
        squares += width * width;
        rows += row;
        rowSquares += double(row) * row;
        mixed += row * width;
    }
    sides.meanWidth = std::max(1.0, sum / n);
    sides.widthSpread = std::sqrt(std::max(0.0, squares / n - (sum / n) * (sum / n))) / sides.meanWidth;
    const double spread = n * rowSquares - rows * rows;
    sides.taper = spread > 0 ? (n * mixed - rows * sum) / spread * n / sides.meanWidth : 0.0;
    return sides;
}

cv::Vec3f labAt(const Ribbon& ribbon, double column, int row) {
    const int c = std::clamp(cvRound(column), 0, ribbon.lab.cols - 1);
    const int r = std::clamp(row + ribbon.reach, 0, ribbon.lab.rows - 1);
    return ribbon.lab.at<cv::Vec3f>(r, c);
}

constexpr int bins = 9;

// Mean colour by place across the tube (0 left edge, 1 right edge), and how much it varies along.
struct Inside {
    std::array<cv::Vec3f, bins> profile{};
    double alongSpread{};
    double acrossSpread{};
    cv::Vec3f mean{0, 0, 0};
};

Inside insideOf(const Ribbon& ribbon, const RibbonEdge& a, const RibbonEdge& b, const Sides& sides) {
    Inside inside;
    std::array<cv::Vec3f, bins> squares{};
    const int rows = sides.last - sides.first + 1;
    for (int row = sides.first; row <= sides.last; ++row)
        for (int bin = 0; bin < bins; ++bin) {
            const double share = (bin + 0.5) / bins;
            const auto i = static_cast<std::size_t>(bin);
            const auto seen =
                labAt(ribbon, columnAt(a, row) + share * (columnAt(b, row) - columnAt(a, row)), row);
            inside.profile[i] += seen;
            squares[i] += seen.mul(seen);
        }
    double along = 0;
    for (std::size_t i = 0; i < bins; ++i) {
        inside.profile[i] *= 1.0F / static_cast<float>(rows);
        const cv::Vec3f variance =
            squares[i] * (1.0F / static_cast<float>(rows)) - inside.profile[i].mul(inside.profile[i]);
        along += std::max(0.0F, variance[0]) + std::max(0.0F, variance[1]) + std::max(0.0F, variance[2]);
        inside.mean += inside.profile[i] * (1.0F / bins);
    }
    inside.alongSpread = std::sqrt(along / bins);
    double across = 0;
    for (const auto& colour : inside.profile)
        across += cv::norm(colour - inside.mean, cv::NORM_L2SQR);
    inside.acrossSpread = std::sqrt(across / bins);
    return inside;
}

cv::Vec3f besideOf(const Ribbon& ribbon, const RibbonEdge& edge, const Sides& sides, double far) {
    cv::Vec3f sum{0, 0, 0};
    int n = 0;
    for (int row = sides.first; row <= sides.last; row += 2)
        for (const double part : {0.5, 1.0}) {
            sum += labAt(ribbon, columnAt(edge, row) + part * far, row);
            ++n;
        }
    return sum * (1.0F / static_cast<float>(std::max(1, n)));
}

float chroma(const cv::Vec3f& a, const cv::Vec3f& b) {
    return std::hypot(a[1] - b[1], a[2] - b[2]);
}

float logOf(double value) {
    return static_cast<float>(std::log(std::max(1e-3, value)));
}

void describe(const Ribbon& ribbon, const std::vector<RibbonEdge>& edges, const cv::Vec3f& ground,
              Segment& segment) {
    const RibbonEdge& a = edges[segment.left];
    const RibbonEdge& b = edges[segment.right];
    const int most = std::clamp(static_cast<int>(1.6 * segment.width), 8, ribbon.reach - 1);
    const Sides sides = sidesOf(a, b, most);
    const Inside inside = insideOf(ribbon, a, b, sides);
    const double far = std::max(2.5, 0.3 * segment.width);
    const cv::Vec3f left = besideOf(ribbon, a, sides, -far);
    const cv::Vec3f right = besideOf(ribbon, b, sides, far);
    double within = 0;
    double withinSame = 0; // edges inside that turn the same way as the rims
    for (std::size_t i = segment.left + 1; i < segment.right; ++i) {
        within = std::max(within, edges[i].strength);
        withinSame = std::max(withinSame,
                              std::max(double(edges[i].step.dot(a.step)), double(edges[i].step.dot(b.step))) /
                                  std::max(1e-3, cv::norm(a.step)));
    }
    const double weaker = std::min(a.strength, b.strength);
    const double stronger = std::max(a.strength, b.strength);
    const double alongAll = double(sides.last - sides.first) / segment.width;
    const float rim = 0.25F * (inside.profile[0][0] + inside.profile[1][0] + inside.profile[bins - 1][0] +
                               inside.profile[bins - 2][0]);
    const float heart = (inside.profile[3][0] + inside.profile[4][0] + inside.profile[5][0]) / 3.0F;
    const float tilt = (inside.profile[1][0] + inside.profile[2][0]) -
                       (inside.profile[bins - 2][0] + inside.profile[bins - 3][0]);
    segment.features = {
        logOf(segment.width),
        logOf(weaker),
        logOf(stronger),
        logOf(within + 0.1),
        static_cast<float>(within / std::max(0.1, weaker)),
        static_cast<float>(withinSame),
        static_cast<float>(std::min(alongAll, 4.0)),
        static_cast<float>(sides.widthSpread),
        static_cast<float>(std::abs(sides.taper)),
        static_cast<float>(std::abs(a.slope - b.slope)),
        logOf(inside.alongSpread),
        logOf(inside.acrossSpread),
        static_cast<float>(std::min(cv::norm(inside.mean - left), cv::norm(inside.mean - right))),
        static_cast<float>(std::max(cv::norm(inside.mean - left), cv::norm(inside.mean - right))),
        static_cast<float>(cv::norm(left - right)),
        static_cast<float>(cv::norm(inside.mean - ground)),
        chroma(inside.mean, ground),
        static_cast<float>(std::min(cv::norm(left - ground), cv::norm(right - ground))),
        static_cast<float>(std::max(cv::norm(left - ground), cv::norm(right - ground))),
        heart - rim,
        std::abs(tilt),
        static_cast<float>(a.step.dot(b.step) / std::max(1e-3, cv::norm(a.step) * cv::norm(b.step))),
    };
}

// A stroke is begun and ended beside the wires, mostly.
cv::Vec3f groundOf(const Ribbon& ribbon) {
    std::array<std::vector<float>, 3> ends;
    const int span = std::min(10, ribbon.lab.cols / 8 + 1);
    for (int row = 0; row < ribbon.lab.rows; row += 2)
        for (int i = 0; i < span; ++i)
            for (const int column : {i, ribbon.lab.cols - 1 - i})
                for (std::size_t c = 0; c < 3; ++c)
                    ends[c].push_back(ribbon.lab.at<cv::Vec3f>(row, column)[static_cast<int>(c)]);
    cv::Vec3f ground;
    for (std::size_t c = 0; c < 3; ++c) {
        const auto middle = ends[c].begin() + static_cast<std::ptrdiff_t>(ends[c].size() / 2);
        std::nth_element(ends[c].begin(), middle, ends[c].end());
        ground[static_cast<int>(c)] = *middle;
    }
    return ground;
}

} // namespace

std::vector<Segment> segmentsOf(const Ribbon& ribbon, const std::vector<RibbonEdge>& edges) {
    std::vector<Segment> segments;
    const cv::Vec3f ground = groundOf(ribbon);
    for (std::size_t left = 0; left < edges.size(); ++left)
        for (std::size_t right = left + 1; right < edges.size() && right <= left + mostBetween; ++right) {
            Segment segment;
            segment.left = left;
            segment.right = right;
            segment.slope = 0.5 * (edges[left].slope + edges[right].slope);
            const double wide = edges[right].at - edges[left].at;
            segment.width = wide / std::hypot(1.0, segment.slope);
            if (segment.width < thinnest || segment.width > thickest ||
                std::abs(edges[left].slope - edges[right].slope) > 0.8)
                continue;
            segment.at = 0.5 * (edges[left].at + edges[right].at);
            segment.first = std::max(edges[left].first, edges[right].first);
            segment.last = std::min(edges[left].last, edges[right].last);
            describe(ribbon, edges, ground, segment);
            segments.push_back(segment);
        }
    return segments;
}

} // namespace undercowl::sight
