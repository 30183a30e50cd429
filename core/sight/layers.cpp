#include "core/sight/layers.h"

#include <opencv2/dnn.hpp>
#include <opencv2/dnn/all_layers.hpp>

#include <xnnpack.h>

#include <algorithm>
#include <cstddef>
#include <limits>
#include <utility>

namespace undercowl::sight {
namespace {

// XNNPACK takes the channels innermost, ONNX outermost.
std::vector<float> channelsInnermost(const cv::Mat& kernel) {
    const auto inputs = std::size_t(kernel.size[1]);
    const std::size_t places = std::size_t(kernel.size[2]) * std::size_t(kernel.size[3]);
    std::vector<float> turned(kernel.total());
    const auto* from = kernel.ptr<float>();
    for (std::size_t output = 0; output < std::size_t(kernel.size[0]); ++output)
        for (std::size_t input = 0; input < inputs; ++input)
            for (std::size_t place = 0; place < places; ++place)
                turned[(output * places + place) * inputs + input] = *from++;
    return turned;
}

} // namespace

std::vector<Weights> weightsOf(std::span<const unsigned char> onnx) {
    const cv::dnn::Net net =
        cv::dnn::readNetFromONNX(reinterpret_cast<const char*>(onnx.data()), onnx.size());
    std::vector<Weights> all;
    for (const cv::String& name : net.getLayerNames()) {
        const auto layer = net.getLayer(net.getLayerId(name)).dynamicCast<cv::dnn::BaseConvolutionLayer>();
        if (!layer)
            continue;
        const cv::Mat& kernel = layer->blobs.front();
        Weights& weights = all.emplace_back();
        weights.outputs = kernel.size[0];
        weights.inputs = kernel.size[1];
        weights.side = kernel.size[2];
        weights.stride = int(layer->strides.front());
        weights.dilation = int(layer->dilations.front());
        weights.kernel = channelsInnermost(kernel);
        weights.bias.resize(std::size_t(weights.outputs));
        if (layer->blobs.size() > 1)
            std::copy_n(layer->blobs[1].ptr<float>(), weights.bias.size(), weights.bias.begin());
    }
    return all;
}

bool quickLayers() {
    static const bool known = xnn_initialize(nullptr) == xnn_status_success;
    return known;
}

cv::Mat roomFor(int rows, int columns, int channels) {
    return cv::Mat(rows + 1, columns, CV_32FC(channels)).rowRange(0, rows);
}

void Convolution::Release::operator()(xnn_operator* layer) const {
    xnn_delete_operator(layer);
}

Convolution::Convolution(Weights weights, Then then, By by) : weights_(std::move(weights)), then_(then) {
    if (by == By::PlainLoops)
        return;
    const auto padding = std::uint32_t(weights_.side / 2 * weights_.dilation);
    const auto side = std::uint32_t(weights_.side);
    const auto stride = std::uint32_t(weights_.stride);
    const auto dilation = std::uint32_t(weights_.dilation);
    const auto inputs = std::size_t(weights_.inputs);
    const auto outputs = std::size_t(weights_.outputs);
    constexpr std::uint32_t groups = 1;
    constexpr float most = std::numeric_limits<float>::infinity();
    xnn_operator* made = nullptr;
    if (xnn_create_convolution2d_nhwc_f32(
            padding, padding, padding, padding, side, side, stride, stride, dilation, dilation, groups,
            inputs, outputs, inputs, outputs, weights_.kernel.data(), weights_.bias.data(),
            then_ == Then::Rectify ? 0.0F : -most, most, 0, &made) != xnn_status_success)
        return;
    layer_.reset(made);
    weights_.kernel.clear();
    weights_.kernel.shrink_to_fit();
}

const cv::Mat& Convolution::operator()(const cv::Mat& in) {
    CV_Assert(in.type() == CV_32FC(weights_.inputs) && in.isContinuous());
    const int reach = (weights_.side - 1) * weights_.dilation - 2 * (weights_.side / 2 * weights_.dilation);
    const int rows = (in.rows - reach - 1) / weights_.stride + 1;
    const int columns = (in.cols - reach - 1) / weights_.stride + 1;
    if (out_.rows != rows || out_.cols != columns)
        out_ = roomFor(rows, columns, weights_.outputs);
    if (!layer_) {
        runPlainly(in);
        return out_;
    }
    constexpr std::size_t pictures = 1;
    // In the calling thread: waiting for others takes longer than so small a layer.
    constexpr pthreadpool_t here = nullptr;
    CV_Assert(xnn_setup_convolution2d_nhwc_f32(layer_.get(), pictures, std::size_t(in.rows),
                                               std::size_t(in.cols), in.ptr<float>(), out_.ptr<float>(),
                                               here) == xnn_status_success);
    CV_Assert(xnn_run_operator(layer_.get(), here) == xnn_status_success);
    return out_;
}

void Convolution::runPlainly(const cv::Mat& in) {
    const int padding = weights_.side / 2 * weights_.dilation;
    for (int row = 0; row < out_.rows; ++row)
        for (int column = 0; column < out_.cols; ++column) {
            const float* kernel = weights_.kernel.data();
            auto* out = out_.ptr<float>(row, column);
            for (int output = 0; output < weights_.outputs; ++output) {
                float sum = weights_.bias[std::size_t(output)];
                for (int down = 0; down < weights_.side; ++down)
                    for (int across = 0; across < weights_.side; ++across, kernel += weights_.inputs) {
                        const int y = row * weights_.stride + down * weights_.dilation - padding;
                        const int x = column * weights_.stride + across * weights_.dilation - padding;
                        if (y < 0 || x < 0 || y >= in.rows || x >= in.cols)
                            continue;
                        const auto* from = in.ptr<float>(y, x);
                        for (int input = 0; input < weights_.inputs; ++input)
                            sum += kernel[input] * from[input];
                    }
                out[output] = then_ == Then::Rectify ? std::max(0.0F, sum) : sum;
            }
        }
}

} // namespace undercowl::sight
