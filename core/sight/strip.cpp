#include "core/sight/strip.h"

#include "core/colour/spaces.h"

#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <array>
#include <cmath>

namespace undercowl::sight {

Point directionAt(const Polyline& line, std::size_t index) {
    const Point& from = line[index == 0 ? 0 : index - 1];
    const Point& to = line[std::min(index + 1, line.size() - 1)];
    const double length = std::hypot(to.x - from.x, to.y - from.y);
    return length > 0.0 ? Point{(to.x - from.x) / length, (to.y - from.y) / length} : Point{1.0, 0.0};
}

cv::Mat straighten(const cv::Mat& linear, const Tube& tube, int columns, double share) {
    const int rows = static_cast<int>(tube.centre.size());
    cv::Mat mapX(rows, columns, CV_32FC1);
    cv::Mat mapY(rows, columns, CV_32FC1);
    for (int row = 0; row < rows; ++row) {
        const Point& centre = tube.centre[static_cast<std::size_t>(row)];
        const Point along = directionAt(tube.centre, static_cast<std::size_t>(row));
        for (int column = 0; column < columns; ++column) {
            const double u = ((column + 0.5) / columns - 0.5) * share * tube.width;
            mapX.at<float>(row, column) = static_cast<float>(centre.x - u * along.y);
            mapY.at<float>(row, column) = static_cast<float>(centre.y + u * along.x);
        }
    }
    cv::Mat strip;
    cv::remap(linear, strip, mapX, mapY, cv::INTER_LINEAR, cv::BORDER_REPLICATE);
    return strip;
}

cv::Mat toLinearLight(const cv::Mat& rgb) {
    std::array<float, 256> table{};
    for (std::size_t i = 0; i < table.size(); ++i)
        table.at(i) = static_cast<float>(colour::decodeSrgb(double(i) / 255.0));
    const cv::Mat lookup(1, 256, CV_32FC1, table.data());
    cv::Mat linear;
    cv::LUT(rgb, lookup, linear);
    return linear;
}

} // namespace undercowl::sight
