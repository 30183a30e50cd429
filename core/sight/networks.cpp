#include "core/sight/networks.h"

#include "core/sight/weights.h"

#include <opencv2/dnn.hpp>
#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <cmath>
#include <mutex>

namespace undercowl::sight {
namespace {

cv::dnn::Net netFrom(std::span<const unsigned char> weights) {
    cv::dnn::Net net =
        cv::dnn::readNetFromONNX(reinterpret_cast<const char*>(weights.data()), weights.size());
    net.setPreferableBackend(cv::dnn::DNN_BACKEND_OPENCV);
    net.setPreferableTarget(cv::dnn::DNN_TARGET_CPU);
    return net;
}

// A network keeps its last input and output, so only one reading at a time may use it.
struct Networks {
    std::mutex one;
    cv::dnn::Net finder = netFrom(finderWeights());
    std::array<cv::dnn::Net, judges> light{netFrom(lightWeights(0)), netFrom(lightWeights(1)),
                                           netFrom(lightWeights(2))};
    std::array<cv::dnn::Net, judges> colours{netFrom(colourWeights(0)), netFrom(colourWeights(1)),
                                             netFrom(colourWeights(2))};
};

Networks& networks() {
    static Networks all;
    return all;
}

// Red, green, blue and whether it is seen, 0 to 1.
void fillPlanes(const Strip& strip, float* cell) {
    constexpr int cells = stripAcross * stripAlong;
    for (int row = 0; row < stripAcross; ++row)
        for (int column = 0; column < stripAlong; ++column, ++cell) {
            const auto& pixel = strip.rgb.at<cv::Vec3b>(row, column);
            const bool seen = strip.seen.at<uchar>(row, column) != 0;
            for (int channel = 0; channel < 3; ++channel)
                cell[channel * cells] = seen ? float(pixel[channel]) / 255.0F : 0.0F;
            cell[3 * cells] = seen ? 1.0F : 0.0F;
        }
}

} // namespace

cv::Mat fieldsOf(const cv::Mat& rgb) {
    const cv::Mat blob = cv::dnn::blobFromImage(rgb, 1.0 / 255.0, {}, {}, false, false, CV_32F);
    Networks& nets = networks();
    const std::lock_guard lock(nets.one);
    nets.finder.setInput(blob);
    return nets.finder.forward().clone();
}

LightCodes lightOf(const cv::Mat& rgb) {
    cv::Mat small;
    cv::resize(rgb, small, {64, 48}, 0, 0, cv::INTER_AREA);
    const cv::Mat blob = cv::dnn::blobFromImage(small, 1.0 / 255.0, {}, {}, false, false, CV_32F);
    LightCodes codes{};
    Networks& nets = networks();
    const std::lock_guard lock(nets.one);
    for (std::size_t i = 0; i < judges; ++i) {
        nets.light.at(i).setInput(blob);
        const cv::Mat out = nets.light.at(i).forward();
        std::copy_n(out.ptr<float>(), codes.at(i).size(), codes.at(i).begin());
    }
    return codes;
}

ColourOdds colourOddsOf(std::size_t judge, const Strip& strip, const LightCodes& light, const White& white) {
    const std::array<int, 4> shape{1, 4, stripAcross, stripAlong};
    const std::array<int, 4> lightShape{1, int(light[0].size() + white.size()), 1, 1};
    cv::Mat planes(int(shape.size()), shape.data(), CV_32F);
    cv::Mat code(int(lightShape.size()), lightShape.data(), CV_32F);
    fillPlanes(strip, planes.ptr<float>());
    std::copy(light.at(judge).begin(), light.at(judge).end(), code.ptr<float>());
    std::copy(white.begin(), white.end(), code.ptr<float>() + light.at(judge).size());
    Networks& nets = networks();
    const std::lock_guard lock(nets.one);
    nets.colours.at(judge).setInput(planes, "strip");
    nets.colours.at(judge).setInput(code, "light");
    const cv::Mat out = nets.colours.at(judge).forward();
    ColourOdds odds{};
    std::copy_n(out.ptr<float>(), odds.size(), odds.begin());
    return odds;
}

} // namespace undercowl::sight
