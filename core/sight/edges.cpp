#include "core/sight/edges.h"

#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <cmath>

namespace undercowl::sight {
namespace {

using Gradient = cv::Vec<float, 6>;

} // namespace

Edges::Edges(const cv::Mat& rgb) {
    cv::Mat lab;
    cv::Mat floating;
    rgb.convertTo(floating, CV_32F, 1.0 / 255.0);
    cv::cvtColor(floating, lab, cv::COLOR_RGB2Lab);
    cv::GaussianBlur(lab, lab, {0, 0}, 1.0);
    cv::Mat dx;
    cv::Mat dy;
    cv::Sobel(lab, dx, CV_32F, 1, 0, 3, 0.125);
    cv::Sobel(lab, dy, CV_32F, 0, 1, 3, 0.125);
    const std::array<cv::Mat, 2> both{dx, dy};
    cv::merge(both.data(), both.size(), gradients_);
}

bool Edges::contains(const Point& p) const {
    return p.x >= 1.0 && p.y >= 1.0 && p.x < gradients_.cols - 2.0 && p.y < gradients_.rows - 2.0;
}

double Edges::across(const Point& p, double nx, double ny) const {
    if (!contains(p))
        return 0.0;
    const auto& g = gradients_.at<Gradient>(static_cast<int>(p.y + 0.5), static_cast<int>(p.x + 0.5));
    double sum = 0.0;
    for (int c = 0; c < 3; ++c) {
        const double along = g[c] * nx + g[c + 3] * ny;
        sum += along * along;
    }
    constexpr double half = 3.0; // Lab units a pixel that count as half an edge
    return std::sqrt(sum) / (std::sqrt(sum) + half);
}

double Edges::sides(const Piece& piece) const {
    const double dx = std::cos(piece.angle);
    const double dy = std::sin(piece.angle);
    double left = 0.0;
    double right = 0.0;
    constexpr int samples = 5;
    for (int i = 0; i < samples; ++i) {
        const double s = (i - samples / 2) * 0.25 * piece.width;
        const auto side = [&](double u) {
            return across({piece.at.x + s * dx - u * dy, piece.at.y + s * dy + u * dx}, -dy, dx);
        };
        left += side(0.5 * piece.width);
        right += side(-0.5 * piece.width);
    }
    return std::sqrt(left * right) / samples;
}

} // namespace undercowl::sight
