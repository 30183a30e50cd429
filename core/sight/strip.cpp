#include "core/sight/strip.h"

#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <cmath>
#include <vector>

namespace undercowl::sight {
namespace {

// A line that can be asked for the place at a distance along it.
class Measured {
public:
    explicit Measured(const Polyline& line) : line_(line), at_(line.size()) {
        for (std::size_t i = 1; i < line.size(); ++i)
            at_[i] = at_[i - 1] + std::hypot(line[i].x - line[i - 1].x, line[i].y - line[i - 1].y);
    }

    [[nodiscard]] double distanceOf(std::size_t index) const { return at_[index]; }
    [[nodiscard]] double length() const { return at_.back(); }

    [[nodiscard]] Point place(double distance) const {
        if (line_.size() < 2)
            return line_.front();
        const auto next = std::upper_bound(at_.begin() + 1, at_.end() - 1, distance) - at_.begin();
        const auto i = std::size_t(next) - 1;
        const double t = std::clamp((distance - at_[i]) / std::max(1e-9, at_[i + 1] - at_[i]), 0.0, 1.0);
        return {line_[i].x + t * (line_[i + 1].x - line_[i].x),
                line_[i].y + t * (line_[i + 1].y - line_[i].y)};
    }

    [[nodiscard]] Point direction(double distance, double step) const {
        const Point a = place(std::max(0.0, distance - step));
        const Point b = place(std::min(length(), distance + step));
        const double apart = std::hypot(b.x - a.x, b.y - a.y);
        return apart > 1e-6 ? Point{(b.x - a.x) / apart, (b.y - a.y) / apart} : Point{1.0, 0.0};
    }

private:
    const Polyline& line_;
    std::vector<double> at_;
};

// 'middle' is the place along the tube that the strip is cut around, pixels from its start.
Strip straightened(const cv::Mat& rgb, const Tube& tube, const Measured& line, double middle) {
    const double step = stripStep * tube.width;
    cv::Mat mapX(stripAcross, stripAlong, CV_32FC1);
    cv::Mat mapY(stripAcross, stripAlong, CV_32FC1);
    Strip strip;
    strip.seen = cv::Mat::zeros(stripAcross, stripAlong, CV_8UC1);
    for (int column = 0; column < stripAlong; ++column) {
        const double distance = middle + (column + 0.5 - 0.5 * stripAlong) * step;
        const bool followed = distance >= -0.5 * step && distance <= line.length() + 0.5 * step;
        const Point centre = line.place(distance);
        const Point along = line.direction(distance, step);
        for (int row = 0; row < stripAcross; ++row) {
            const double u = ((row + 0.5) / stripAcross - 0.5) * stripSpan * tube.width;
            const double x = centre.x - u * along.y;
            const double y = centre.y + u * along.x;
            mapX.at<float>(row, column) = float(x - 0.5);
            mapY.at<float>(row, column) = float(y - 0.5);
            if (followed && x > 0.0 && y > 0.0 && x < rgb.cols - 1.0 && y < rgb.rows - 1.0)
                strip.seen.at<uchar>(row, column) = 255;
        }
    }
    cv::remap(rgb, strip.rgb, mapX, mapY, cv::INTER_LINEAR, cv::BORDER_REPLICATE);
    return strip;
}

} // namespace

Strip straighten(const cv::Mat& rgb, Tube tube, double share) {
    tube.width *= share;
    const Measured line(tube.centre);
    return straightened(rgb, tube, line, line.distanceOf(tube.anchor));
}

std::vector<Strip> straightenFurther(const cv::Mat& rgb, const Tube& tube) {
    const Measured line(tube.centre);
    const double anchor = line.distanceOf(tube.anchor);
    const double half = 0.5 * stripAlong * stripStep * tube.width;
    const double enough = 3.0 * tube.width;
    std::vector<Strip> parts;
    if (anchor + half + enough < line.length())
        parts.push_back(straightened(rgb, tube, line, anchor + 1.75 * half));
    if (anchor - half - enough > 0.0)
        parts.push_back(straightened(rgb, tube, line, anchor - 1.75 * half));
    return parts;
}

} // namespace undercowl::sight
