// The learned networks as they are run here, against OpenCV's dnn, which runs the same files by itself.
#include "core/sight/layers.h"
#include "core/sight/networks.h"
#include "core/sight/weights.h"

#include <catch2/catch.hpp>

#include <opencv2/dnn.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <span>

using namespace undercowl::sight;

namespace {

cv::dnn::Net reference(std::span<const unsigned char> onnx) {
    cv::dnn::Net net = cv::dnn::readNetFromONNX(reinterpret_cast<const char*>(onnx.data()), onnx.size());
    net.setPreferableBackend(cv::dnn::DNN_BACKEND_OPENCV);
    return net;
}

cv::Mat noise(int rows, int columns, int type, std::uint64_t seed) {
    cv::Mat picture(rows, columns, type);
    cv::RNG random(seed);
    random.fill(picture, cv::RNG::UNIFORM, 0, 256);
    return picture;
}

cv::Mat blobOf(const cv::Mat& picture, double scale) {
    return cv::dnn::blobFromImage(picture, scale, {}, {}, false, false, CV_32F);
}

constexpr float near = 2e-3F; // of log odds and the like, which go to 10 and more

} // namespace

TEST_CASE("the finder tells of a picture what OpenCV's dnn tells by the same weights", "[sight]") {
    const cv::Size size = GENERATE(cv::Size{448, 448}, cv::Size{64, 160}, cv::Size{16, 16});
    const cv::Mat rgb = noise(size.height, size.width, CV_8UC3, 7);
    cv::dnn::Net net = reference(finderWeights());
    net.setInput(blobOf(rgb, 1.0 / 255.0));
    const cv::Mat wanted = net.forward();
    const cv::Mat fields = fieldsOf(rgb);
    REQUIRE(fields.channels() == wanted.size[1]);
    REQUIRE(fields.rows == wanted.size[2]);
    REQUIRE(fields.cols == wanted.size[3]);
    float furthest = 0.0F;
    for (int row = 0; row < fields.rows; ++row)
        for (int column = 0; column < fields.cols; ++column)
            for (int channel = 0; channel < fields.channels(); ++channel)
                furthest =
                    std::max(furthest, std::abs(fields.ptr<float>(row, column)[channel] -
                                                wanted.ptr<float>(0, channel)[row * fields.cols + column]));
    CHECK(furthest < near);
}

TEST_CASE("every judge says of a strip and its light what OpenCV's dnn says by the same weights", "[sight]") {
    const auto judge = GENERATE(range(std::size_t{0}, judges));
    const cv::Mat rgb = noise(48, 64, CV_8UC3, 11);
    const LightCodes light = lightOf(rgb);
    cv::dnn::Net lights = reference(lightWeights(judge));
    lights.setInput(blobOf(rgb, 1.0 / 255.0));
    const cv::Mat wantedLight = lights.forward();
    for (std::size_t i = 0; i < light.at(judge).size(); ++i)
        CHECK(light.at(judge).at(i) == Approx(wantedLight.ptr<float>()[i]).margin(near));

    Strip strip{noise(stripAcross, stripAlong, CV_8UC3, 13), cv::Mat(stripAcross, stripAlong, CV_8UC1, 255)};
    strip.seen.colRange(100, stripAlong).setTo(0); // followed no further
    const White white{0.1F, -0.2F, -0.3F, 1.0F};
    cv::Mat seen;
    strip.rgb.copyTo(seen, strip.seen);
    std::vector<cv::Mat> planes;
    cv::split(seen, planes);
    planes.push_back(strip.seen);
    cv::Mat all;
    cv::merge(planes, all);
    cv::Mat code(20, 1, CV_32F);
    std::copy(light.at(judge).begin(), light.at(judge).end(), code.ptr<float>());
    std::copy(white.begin(), white.end(), code.ptr<float>() + light.at(judge).size());
    cv::dnn::Net colours = reference(colourWeights(judge));
    colours.setInput(blobOf(all, 1.0 / 255.0), "strip");
    const std::array<int, 4> shape{1, 20, 1, 1};
    colours.setInput(code.reshape(1, int(shape.size()), shape.data()), "light");
    const cv::Mat wanted = colours.forward();
    const ColourOdds odds = colourOddsOf(judge, strip, light, white);
    REQUIRE(wanted.total() == odds.size());
    for (std::size_t i = 0; i < odds.size(); ++i)
        CHECK(odds.at(i) == Approx(wanted.ptr<float>()[i]).margin(near));
}

TEST_CASE("a layer worked out plainly gives what the library gives", "[sight]") {
    REQUIRE(quickLayers());
    const auto then = GENERATE(Convolution::Then::Nothing, Convolution::Then::Rectify);
    cv::Mat in = roomFor(13, 22, 64);
    cv::RNG(17).fill(in, cv::RNG::NORMAL, 0.0, 1.0);
    bool negative = false;
    int tried = 0;
    for (const Weights& weights : weightsOf(finderWeights())) {
        if (weights.inputs != in.channels())
            continue;
        ++tried;
        Convolution quick(weights, then, Convolution::By::Library);
        Convolution plain(weights, then, Convolution::By::PlainLoops);
        const cv::Mat& wanted = quick(in);
        const cv::Mat& got = plain(in);
        REQUIRE(got.size() == wanted.size());
        CHECK(cv::norm(got, wanted, cv::NORM_INF) < near);
        double least = 0.0;
        cv::minMaxLoc(got.reshape(1), &least);
        negative = negative || least < 0.0;
    }
    CHECK(tried == 4); // strides of 1 and 2, kernels of 1 and 3
    CHECK(negative == (then == Convolution::Then::Nothing));
}
