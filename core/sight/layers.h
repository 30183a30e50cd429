// What the learned networks are made of. Only core/sight and its tests include this.
//
// OpenCV's dnn reads the files; the layers are run by XNNPACK, in a third of the time that OpenCV 4.6 takes.
// Pictures lie row by row with the channels innermost: CV_32FC(channels).
#pragma once

#include <opencv2/core.hpp>

#include <cstdint>
#include <memory>
#include <span>
#include <vector>

struct xnn_operator;

namespace undercowl::sight {

// What a layer that was read from a file consists of.
struct Weights {
    int inputs{};  // channels
    int outputs{}; // channels
    int side{};    // of the square kernel
    int stride{};
    int dilation{};
    std::vector<float> kernel; // outputs x side x side x inputs
    std::vector<float> bias;   // outputs
};

// Of the convolutions of an ONNX file, in its order. Throws cv::Exception when it is none; the files travel
// inside the library.
[[nodiscard]] std::vector<Weights> weightsOf(std::span<const unsigned char> onnx);

// Whether the processor is one that XNNPACK knows; where it is not, layers are worked out plainly.
[[nodiscard]] bool quickLayers();

// A convolution over pictures, padded by zeros so that a stride of 1 keeps their size. It keeps its last
// result, so only one thread at a time may use it.
class Convolution {
public:
    enum class Then : std::uint8_t { Nothing, Rectify }; // what becomes of negative results: 0, if rectified
    enum class By : std::uint8_t { Library, PlainLoops };

    Convolution(Weights weights, Then then, By by = quickLayers() ? By::Library : By::PlainLoops);

    // CV_32FC(inputs) to CV_32FC(outputs). The result is the layer's own, until it is asked again.
    [[nodiscard]] const cv::Mat& operator()(const cv::Mat& in);

private:
    struct Release {
        void operator()(xnn_operator* layer) const;
    };

    void runPlainly(const cv::Mat& in);

    Weights weights_; // without numbers where XNNPACK holds them
    Then then_;
    std::unique_ptr<xnn_operator, Release> layer_;
    cv::Mat out_;
};

// A picture, CV_32FC(channels), of which XNNPACK may read a little beyond the end.
[[nodiscard]] cv::Mat roomFor(int rows, int columns, int channels);

} // namespace undercowl::sight
