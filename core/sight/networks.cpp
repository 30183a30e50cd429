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

// Tiles overlap by what a place's answer hangs on, so that no seam shows.
constexpr int tile = 384;
constexpr int margin = 64;

cv::Mat plane(const cv::Mat& blob, int channel) {
    return {blob.size[2], blob.size[3], CV_32FC1, const_cast<float*>(blob.ptr<float>(0, channel))};
}

void copyTile(const cv::Mat& blob, Fields& fields, cv::Point at, const cv::Rect& inner) {
    const cv::Rect from((inner.x - at.x) / 2, (inner.y - at.y) / 2, inner.width / 2, inner.height / 2);
    const cv::Rect to = cv::Rect(inner.x / 2, inner.y / 2, inner.width / 2, inner.height / 2) &
                        cv::Rect({}, fields.wire.size());
    const cv::Rect cut(from.x, from.y, to.width, to.height);
    cv::Mat odds;
    cv::exp(-plane(blob, 0)(cut), odds);
    cv::Mat(1.0 / (1.0 + odds)).copyTo(fields.wire(to));
    cv::Mat(plane(blob, 1)(cut) * 8.0).copyTo(fields.dx(to));
    cv::Mat(plane(blob, 2)(cut) * 8.0).copyTo(fields.dy(to));
    plane(blob, 3)(cut).copyTo(fields.cos2(to));
    plane(blob, 4)(cut).copyTo(fields.sin2(to));
    cv::Mat half;
    cv::exp(plane(blob, 5)(cut), half);
    cv::Mat(half * 8.0).copyTo(fields.halfWidth(to));
}

// Red, green, blue and whether it is seen, 0 to 1.
void fillPlanes(const Strip& strip, cv::Mat& planes) {
    constexpr int cells = stripAcross * stripAlong;
    auto* cell = planes.ptr<float>();
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

Fields findFields(const cv::Mat& rgb, const std::function<bool()>& cancelled) {
    const cv::Size size((rgb.cols + 1) / 2, (rgb.rows + 1) / 2);
    Fields fields;
    for (cv::Mat* field :
         {&fields.wire, &fields.dx, &fields.dy, &fields.cos2, &fields.sin2, &fields.halfWidth})
        *field = cv::Mat::zeros(size, CV_32FC1);
    // The right and lower rim of the last tiles is filled with the picture mirrored.
    const int inner = tile - 2 * margin;
    cv::Mat padded;
    const auto upTo = [&](int side) { return (side + inner - 1) / inner * inner + margin - side; };
    cv::copyMakeBorder(rgb, padded, margin, upTo(rgb.rows), margin, upTo(rgb.cols), cv::BORDER_REFLECT_101);
    Networks& nets = networks();
    for (int y = 0; y < rgb.rows; y += inner)
        for (int x = 0; x < rgb.cols; x += inner) {
            if (cancelled && cancelled())
                return fields;
            const cv::Mat blob = cv::dnn::blobFromImage(padded(cv::Rect(x, y, tile, tile)), 1.0 / 255.0, {},
                                                        {}, false, false, CV_32F);
            const std::lock_guard lock(nets.one);
            nets.finder.setInput(blob);
            copyTile(nets.finder.forward(), fields, {x - margin, y - margin}, cv::Rect(x, y, inner, inner));
        }
    return fields;
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

std::vector<ColourOdds> colourOddsOf(const Strip& strip, const LightCodes& light, const White& white,
                                     std::size_t step) {
    constexpr int cells = stripAcross * stripAlong;
    constexpr int colours = 4; // red, green, blue, seen
    const int lights = int(light[0].size() + white.size());
    const std::array<int, 4> shape{1, colours + lights, stripAcross, stripAlong};
    const std::array<int, 4> lightShape{1, lights, 1, 1};
    cv::Mat planes(int(shape.size()), shape.data(), CV_32F);
    cv::Mat code(int(lightShape.size()), lightShape.data(), CV_32F);
    std::vector<ColourOdds> odds;
    Networks& nets = networks();
    const std::lock_guard lock(nets.one);
    fillPlanes(strip, planes);
    for (std::size_t i = 0; i < judges; i += step) {
        std::copy(light.at(i).begin(), light.at(i).end(), code.ptr<float>());
        std::copy(white.begin(), white.end(), code.ptr<float>() + light.at(i).size());
        for (int channel = 0; channel < lights; ++channel)
            std::fill_n(planes.ptr<float>(0, colours + channel), cells, code.ptr<float>()[channel]);
        nets.colours.at(i).setInput(planes, "planes");
        nets.colours.at(i).setInput(code, "light");
        const cv::Mat out = nets.colours.at(i).forward();
        std::copy_n(out.ptr<float>(), ColourOdds{}.size(), odds.emplace_back().begin());
    }
    return odds;
}

} // namespace undercowl::sight
