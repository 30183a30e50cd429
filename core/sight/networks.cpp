#include "core/sight/networks.h"

#include "core/sight/layers.h"
#include "core/sight/weights.h"

#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <mutex>
#include <span>
#include <utility>
#include <vector>

namespace undercowl::sight {
namespace {

using Then = Convolution::Then;

// What a network is made of, as tests/sight/train/networks.py says, whose order the file keeps.
class Layers {
public:
    explicit Layers(std::span<const unsigned char> onnx) : weights_(weightsOf(onnx)) {}

    [[nodiscard]] Convolution next(Then then = Then::Rectify) {
        return {std::move(weights_.at(taken_++)), then};
    }

private:
    std::vector<Weights> weights_;
    std::size_t taken_{};
};

// One after the other, at least one.
class Block {
public:
    Block(Layers& layers, int count) {
        for (int i = 0; i < count; ++i)
            layers_.push_back(layers.next());
    }

    [[nodiscard]] const cv::Mat& operator()(const cv::Mat& in) {
        const cv::Mat* out = &layers_.front()(in);
        for (auto layer = layers_.begin() + 1; layer != layers_.end(); ++layer)
            out = &(*layer)(*out);
        return *out;
    }

private:
    std::vector<Convolution> layers_;
};

// The middle of what a pixel can be is 0.
cv::Mat centred(const cv::Mat& rgb) {
    cv::Mat out = roomFor(rgb.rows, rgb.cols, rgb.channels());
    rgb.convertTo(out, CV_32F, 1.0 / 255.0, -0.5);
    return out;
}

// What is known of a picture of twice the size, and of this one besides.
cv::Mat with(const cv::Mat& fine, const cv::Mat& coarse) {
    cv::Mat sum = roomFor(fine.rows, fine.cols, fine.channels());
    cv::resize(coarse, sum, fine.size(), 0, 0, cv::INTER_NEAREST);
    sum += fine;
    return sum;
}

// One of the pixels for each of the channels: their mean, or their greatest.
cv::Mat overPixels(const cv::Mat& picture, cv::ReduceTypes how) {
    const int downwards = 0;
    cv::Mat out;
    cv::reduce(picture.reshape(1, int(picture.total())), out, downwards, how);
    return out;
}

class Finder {
public:
    explicit Finder(Layers layers)
        : e0_(layers, 2), e1_(layers, 2), e2_(layers, 2), e3_(layers, 3), l3_(layers.next()),
          d2_(layers.next()), l2_(layers.next()), d1_(layers.next()), l1_(layers.next()), d0_(layers.next()),
          out_(layers.next(Then::Nothing)) {}

    [[nodiscard]] const cv::Mat& operator()(const cv::Mat& rgb) {
        const cv::Mat& a = e0_(centred(rgb));
        const cv::Mat& b = e1_(a);
        const cv::Mat& c = e2_(b);
        const cv::Mat& third = d2_(with(c, l3_(e3_(c))));
        const cv::Mat& second = d1_(with(b, l2_(third)));
        return out_(d0_(with(a, l1_(second))));
    }

private:
    Block e0_, e1_, e2_, e3_;
    Convolution l3_, d2_, l2_, d1_, l1_, d0_, out_;
};

class Light {
public:
    explicit Light(Layers layers) : body_(layers, 3), last_(layers.next(Then::Nothing)) {}

    void read(const cv::Mat& small, std::array<float, 16>& code) {
        cv::Mat out = last_(body_(centred(small)));
        std::for_each(out.begin<cv::Vec<float, 16>>(), out.end<cv::Vec<float, 16>>(), [](auto& place) {
            for (int i = 0; i < place.channels; ++i)
                place[i] = std::tanh(place[i]);
        });
        const cv::Mat mean = overPixels(out, cv::REDUCE_AVG);
        std::copy_n(mean.ptr<float>(), code.size(), code.begin());
    }

private:
    Block body_;
    Convolution last_;
};

class Colours {
public:
    explicit Colours(Layers layers)
        : first_(layers.next(Then::Nothing)), tint_(layers.next(Then::Nothing)), body_(layers, 6),
          f0_(layers.next()), f1_(layers.next(Then::Nothing)) {}

    // 'light' is of CV_32FC1, one row.
    [[nodiscard]] const cv::Mat& operator()(const cv::Mat& strip, const cv::Mat& light) {
        cv::Mat tinted = first_(strip);
        const auto* offset = tint_(light.reshape(light.cols)).ptr<float>();
        const int channels = tinted.channels();
        auto* value = tinted.ptr<float>();
        for (std::size_t pixel = 0; pixel < tinted.total(); ++pixel)
            for (int channel = 0; channel < channels; ++channel, ++value)
                *value = std::max(0.0F, *value + offset[channel]);
        const cv::Mat& all = body_(tinted);
        // Three widths to either side of the tap: further on it may be another wire.
        const cv::Mat near = all.colRange(5, 11).clone();
        cv::Mat seen;
        cv::hconcat(std::vector{overPixels(all, cv::REDUCE_AVG), overPixels(all, cv::REDUCE_MAX),
                                overPixels(near, cv::REDUCE_AVG), overPixels(near, cv::REDUCE_MAX), light},
                    seen);
        cv::Mat padded = roomFor(1, 1, seen.cols);
        std::copy_n(seen.ptr<float>(), seen.cols, padded.ptr<float>());
        return f1_(f0_(padded));
    }

private:
    Convolution first_, tint_;
    Block body_;
    Convolution f0_, f1_;
};

// A network keeps what its layers made last, so only one reading at a time may use it.
struct Networks {
    std::mutex one;
    Finder finder{Layers(finderWeights())};
    std::array<Light, judges> light{Light{Layers(lightWeights(0))}, Light{Layers(lightWeights(1))},
                                    Light{Layers(lightWeights(2))}};
    std::array<Colours, judges> colours{Colours{Layers(colourWeights(0))}, Colours{Layers(colourWeights(1))},
                                        Colours{Layers(colourWeights(2))}};
};

Networks& networks() {
    static Networks all;
    return all;
}

// Red, green, blue, 0 to 1, and whether it is seen.
cv::Mat planesOf(const Strip& strip) {
    constexpr int channels = 4;
    cv::Mat planes = roomFor(stripAcross, stripAlong, channels);
    for (int row = 0; row < stripAcross; ++row)
        for (int column = 0; column < stripAlong; ++column) {
            const auto& pixel = strip.rgb.at<cv::Vec3b>(row, column);
            const float seen = strip.seen.at<uchar>(row, column) != 0 ? 1.0F : 0.0F;
            for (int channel = 0; channel < 3; ++channel)
                planes.at<cv::Vec4f>(row, column)[channel] = seen * float(pixel[channel]) / 255.0F;
            planes.at<cv::Vec4f>(row, column)[3] = seen;
        }
    return planes;
}

} // namespace

cv::Mat fieldsOf(const cv::Mat& rgb) {
    Networks& nets = networks();
    const std::lock_guard lock(nets.one);
    return nets.finder(rgb).clone();
}

LightCodes lightOf(const cv::Mat& rgb) {
    cv::Mat small;
    cv::resize(rgb, small, {64, 48}, 0, 0, cv::INTER_AREA);
    LightCodes codes{};
    Networks& nets = networks();
    const std::lock_guard lock(nets.one);
    for (std::size_t i = 0; i < judges; ++i)
        nets.light.at(i).read(small, codes.at(i));
    return codes;
}

ColourOdds colourOddsOf(std::size_t judge, const Strip& strip, const LightCodes& light, const White& white) {
    cv::Mat code = roomFor(1, int(light[0].size() + white.size()), 1);
    auto* last = std::copy(light.at(judge).begin(), light.at(judge).end(), code.ptr<float>());
    std::copy(white.begin(), white.end(), last);
    Networks& nets = networks();
    const std::lock_guard lock(nets.one);
    const cv::Mat& out = nets.colours.at(judge)(planesOf(strip), code);
    ColourOdds odds{};
    std::copy_n(out.ptr<float>(), odds.size(), odds.begin());
    return odds;
}

} // namespace undercowl::sight
