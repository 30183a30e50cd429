#include "core/sight/summary.h"

#include "core/colour/insulation.h"

#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <cmath>
#include <vector>

namespace undercowl::sight {
namespace {

constexpr float burntOut = 0.97F;
constexpr std::size_t fewest = 12;

double luminance(const cv::Vec3d& c) {
    return 0.2126 * c[0] + 0.7152 * c[1] + 0.0722 * c[2];
}

double part(std::vector<double>& values, double share) {
    const auto at = values.begin() + static_cast<std::ptrdiff_t>(share * double(values.size() - 1));
    std::nth_element(values.begin(), at, values.end());
    return *at;
}

cv::Vec3d median(const std::vector<cv::Vec3d>& colours) {
    cv::Vec3d result;
    for (int c = 0; c < 3; ++c) {
        std::vector<double> channel;
        channel.reserve(colours.size());
        for (const auto& colour : colours)
            channel.push_back(colour[c]);
        result[c] = channel.empty() ? 0.0 : part(channel, 0.5);
    }
    return result;
}

// Cube roots of light, roughly what the eye makes of it; colour counts more than lightness, which shading
// changes.
cv::Vec3f clusterSpace(const cv::Vec3d& c) {
    const double r = std::cbrt(std::max(0.0, c[0]));
    const double g = std::cbrt(std::max(0.0, c[1]));
    const double b = std::cbrt(std::max(0.0, c[2]));
    return {static_cast<float>(0.45 * (r + g + b) / 3.0), static_cast<float>(r - g),
            static_cast<float>(0.6 * (b - g))};
}

// Darker than this the sensor's noise decides: such colours are drawn towards neutral.
constexpr double floorOfLight = 0.004;

double level(double light) {
    return std::log(std::max(0.0, light) + floorOfLight);
}

} // namespace

Surroundings surroundingsOf(const cv::Mat& linear) {
    cv::Mat small;
    cv::resize(linear, small, {160, 120}, 0, 0, cv::INTER_AREA);
    Surroundings around;
    std::vector<double> lights;
    cv::Vec3d power{0, 0, 0};
    for (int y = 0; y < small.rows; ++y)
        for (int x = 0; x < small.cols; ++x) {
            const cv::Vec3d c = small.at<cv::Vec3f>(y, x);
            around.mean += c;
            for (int i = 0; i < 3; ++i)
                power[i] += std::pow(c[i], 6.0);
            lights.push_back(luminance(c));
        }
    const double n = double(small.total());
    around.mean *= 1.0 / n;
    for (int i = 0; i < 3; ++i)
        around.bright[i] = std::max(0.01, std::pow(power[i] / n, 1.0 / 6.0));
    around.dark = part(lights, 0.1);
    around.middle = part(lights, 0.5);
    around.light = part(lights, 0.95);
    return around;
}

std::optional<Summary> summarise(const cv::Mat& strip) {
    struct Pixel {
        cv::Vec3d colour;
        int row;
        int column;
    };
    std::vector<Pixel> pixels;
    for (int y = 0; y < strip.rows; ++y)
        for (int x = 0; x < strip.cols; ++x) {
            const auto& v = strip.at<cv::Vec3f>(y, x);
            if (std::max({v[0], v[1], v[2]}) <= burntOut)
                pixels.push_back({cv::Vec3d(v), y, x});
        }
    if (pixels.size() < fewest)
        return std::nullopt;
    cv::Mat points(static_cast<int>(pixels.size()), 3, CV_32F);
    for (int i = 0; i < points.rows; ++i)
        *points.ptr<cv::Vec3f>(i) = clusterSpace(pixels[static_cast<std::size_t>(i)].colour);
    cv::Mat labels;
    cv::setRNGSeed(7); // the same photo gives the same answer
    cv::kmeans(points, 2, labels, {cv::TermCriteria::COUNT + cv::TermCriteria::EPS, 15, 0.001}, 3,
               cv::KMEANS_PP_CENTERS);
    const int ones = cv::countNonZero(labels);
    const int otherLabel = 2 * ones > labels.rows ? 0 : 1;

    Summary summary;
    std::vector<cv::Vec3d> base;
    std::vector<cv::Vec3d> other;
    std::vector<int> least(static_cast<std::size_t>(strip.rows), strip.cols);
    std::vector<int> most(static_cast<std::size_t>(strip.rows), -1);
    for (int i = 0; i < labels.rows; ++i) {
        const Pixel& pixel = pixels[static_cast<std::size_t>(i)];
        if (labels.at<int>(i) != otherLabel) {
            base.push_back(pixel.colour);
            continue;
        }
        other.push_back(pixel.colour);
        const auto row = static_cast<std::size_t>(pixel.row);
        least[row] = std::min(least[row], pixel.column);
        most[row] = std::max(most[row], pixel.column);
        summary.otherRim += pixel.column <= 1 || pixel.column >= strip.cols - 2 ? 1.0 : 0.0;
    }
    double shown = 0;
    for (std::size_t row = 0; row < least.size(); ++row)
        if (most[row] >= 0) {
            shown += 1;
            summary.otherSpread += double(most[row] - least[row] + 1) / strip.cols;
        }
    summary.base = median(base);
    summary.other = other.empty() ? summary.base : median(other);
    summary.otherShare = double(other.size()) / double(pixels.size());
    summary.otherRows = shown / strip.rows;
    summary.otherSpread /= std::max(1.0, shown);
    summary.otherRim /= std::max<double>(1.0, double(other.size()));
    summary.clipped = 1.0 - double(pixels.size()) / double(strip.total());
    return summary;
}

std::array<double, colourInputs> colourInputsOf(const cv::Vec3d& colour, const Surroundings& around) {
    const cv::Vec3d white = around.white.value_or(around.bright * 1.15);
    const double redness = level(colour[0]) - level(colour[1]);
    const double blueness = level(colour[2]) - level(colour[1]);
    const double lightness = level(luminance(colour));
    return {redness - (level(white[0]) - level(white[1])),
            blueness - (level(white[2]) - level(white[1])),
            lightness - level(luminance(white)),
            redness,
            blueness,
            lightness - level(1),
            lightness - level(around.middle)};
}

std::array<double, structureInputs> structureInputsOf(const Summary& summary, const Shares& base,
                                                      const Shares& other, double strength) {
    const auto reddish = [](const cv::Vec3d& c) { return level(c[0]) - level(c[1]); };
    const auto bluish = [](const cv::Vec3d& c) { return level(c[2]) - level(c[1]); };
    const double red = reddish(summary.base) - reddish(summary.other);
    const double blue = bluish(summary.base) - bluish(summary.other);
    double same = 0;
    double baseEntropy = 0;
    double otherEntropy = 0;
    for (std::size_t i = 0; i < insulations; ++i) {
        same += base[i] * other[i];
        baseEntropy -= base[i] * std::log(base[i] + 1e-6);
        otherEntropy -= other[i] * std::log(other[i] + 1e-6);
    }
    const auto of = [](const Shares& shares, colour::Insulation code) {
        return shares[static_cast<std::size_t>(code)];
    };
    using enum colour::Insulation;
    return {summary.otherShare,
            summary.otherRows,
            summary.otherRim,
            summary.otherSpread,
            level(luminance(summary.other)) - level(luminance(summary.base)),
            summary.clipped,
            std::hypot(red, blue),
            red,
            blue,
            level(luminance(summary.base)) - level(1),
            std::log(same + 1e-4),
            baseEntropy,
            otherEntropy,
            of(base, BK),
            of(base, GY),
            of(base, WH),
            of(other, BK),
            of(other, GY),
            of(other, WH),
            strength};
}

} // namespace undercowl::sight
