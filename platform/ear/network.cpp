#include "platform/ear/network.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstdint>

namespace undercowl::platform {
namespace {

constexpr std::size_t firstKernel = 5;

// 'Nothing new' is made less likely by this much: in voices that the networks did not learn from they tend to
// leave words out. Found together with the thresholds of twofoldear.cpp.
constexpr float fewerGaps = 4;

// By channel, then by frame.
struct Sheet {
    std::size_t channels{};
    std::size_t frames{};
    std::vector<float> values;

    Sheet(std::size_t channelCount, std::size_t frameCount)
        : channels(channelCount), frames(frameCount), values(channelCount * frameCount) {}
    [[nodiscard]] float* row(std::size_t channel) { return values.data() + channel * frames; }
    [[nodiscard]] const float* row(std::size_t channel) const { return values.data() + channel * frames; }
};

// IEEE 754 binary16.
float fromHalf(std::uint16_t half) {
    const std::uint32_t sign = (half & 0x8000U) << 16U;
    const std::uint32_t exponent = (half >> 10U) & 0x1FU;
    const std::uint32_t fraction = half & 0x3FFU;
    if (exponent == 0)
        return std::bit_cast<float>(sign |
                                    std::bit_cast<std::uint32_t>(static_cast<float>(fraction) * 0x1p-24F));
    return std::bit_cast<float>(sign | ((exponent + 112U) << 23U) | (fraction << 13U));
}

class Reader {
public:
    explicit Reader(std::span<const unsigned char> bytes) : bytes_(bytes) {}

    std::uint16_t word() {
        const auto value = static_cast<std::uint16_t>(bytes_[at_] | (bytes_[at_ + 1] << 8U));
        at_ += 2;
        return value;
    }
    std::vector<float> floats(std::size_t count) {
        std::vector<float> values(count);
        for (float& value : values)
            value = fromHalf(word());
        return values;
    }

private:
    std::span<const unsigned char> bytes_;
    std::size_t at_{};
};

// out += weight * (in moved by 'shift' frames, every 'stride'th of it); what lies outside is 0.
void addMoved(float* out, std::size_t outFrames, const float* in, std::size_t inFrames, float weight,
              std::ptrdiff_t shift, std::ptrdiff_t stride) {
    const auto count = static_cast<std::ptrdiff_t>(outFrames);
    const auto length = static_cast<std::ptrdiff_t>(inFrames);
    const std::ptrdiff_t begin = shift >= 0 ? 0 : (-shift + stride - 1) / stride;
    const std::ptrdiff_t end = std::min(count, (length - shift + stride - 1) / stride);
    for (std::ptrdiff_t t = begin; t < end; ++t)
        out[t] += weight * in[t * stride + shift];
}

// Every channel of 'in' to every channel of the answer.
Sheet pointwise(const Sheet& in, const std::vector<float>& weights, const std::vector<float>& bias) {
    Sheet out(bias.size(), in.frames);
    for (std::size_t o = 0; o < out.channels; ++o) {
        float* row = out.row(o);
        std::fill(row, row + out.frames, bias[o]);
        for (std::size_t i = 0; i < in.channels; ++i) {
            const float weight = weights[o * in.channels + i];
            const float* from = in.row(i);
            for (std::size_t t = 0; t < out.frames; ++t)
                row[t] += weight * from[t];
        }
    }
    return out;
}

Sheet depthwise(const Sheet& in, const std::vector<float>& weights, std::size_t kernel, std::size_t stride) {
    Sheet out(in.channels, (in.frames + stride - 1) / stride);
    for (std::size_t c = 0; c < in.channels; ++c)
        for (std::size_t k = 0; k < kernel; ++k)
            addMoved(out.row(c), out.frames, in.row(c), in.frames, weights[c * kernel + k],
                     static_cast<std::ptrdiff_t>(k) - static_cast<std::ptrdiff_t>(kernel / 2),
                     static_cast<std::ptrdiff_t>(stride));
    return out;
}

void keepPositive(Sheet& sheet) {
    for (float& value : sheet.values)
        value = std::max(0.0F, value);
}

Likely likely(const Sheet& sheet) {
    Likely out{sheet.frames, sheet.channels, std::vector<float>(sheet.values.size())};
    for (std::size_t t = 0; t < sheet.frames; ++t) {
        float most = sheet.row(0)[t];
        for (std::size_t c = 1; c < sheet.channels; ++c)
            most = std::max(most, sheet.row(c)[t]);
        double sum = 0;
        for (std::size_t c = 0; c < sheet.channels; ++c)
            sum += std::exp(static_cast<double>(sheet.row(c)[t] - most));
        const float log = most + static_cast<float>(std::log(sum));
        for (std::size_t c = 0; c < sheet.channels; ++c)
            out.logs[t * sheet.channels + c] = sheet.row(c)[t] - log;
    }
    return out;
}

} // namespace

Network::Network(std::span<const unsigned char> bytes) {
    Reader reader{bytes};
    const std::size_t bands = reader.word();
    channels_ = reader.word();
    const std::size_t blocks = reader.word();
    kernel_ = reader.word();
    classes_ = reader.word();
    first_ = reader.floats(channels_ * bands * firstKernel);
    firstBias_ = reader.floats(channels_);
    for (std::size_t i = 0; i <= blocks; ++i) {
        Layer layer;
        layer.depth = reader.floats(channels_ * (i == 0 ? firstKernel : kernel_));
        layer.point = reader.floats(channels_ * channels_);
        layer.bias = reader.floats(channels_);
        layers_.push_back(std::move(layer));
    }
    last_ = reader.floats(classes_ * channels_);
    lastBias_ = reader.floats(classes_);
    lastBias_[0] -= fewerGaps;
}

Likely Network::listen(const Features& features) const {
    if (features.frames == 0)
        return {0, classes_, {}};
    Sheet sheet(channels_, (features.frames + 1) / 2);
    for (std::size_t c = 0; c < channels_; ++c) {
        float* row = sheet.row(c);
        std::fill(row, row + sheet.frames, firstBias_[c]);
        for (std::size_t b = 0; b < earBands; ++b)
            for (std::size_t k = 0; k < firstKernel; ++k)
                addMoved(row, sheet.frames, features.values.data() + b * features.frames, features.frames,
                         first_[(c * earBands + b) * firstKernel + k],
                         static_cast<std::ptrdiff_t>(k) - static_cast<std::ptrdiff_t>(firstKernel / 2), 2);
    }
    keepPositive(sheet);
    for (std::size_t i = 0; i < layers_.size(); ++i) {
        const bool halves = i == 0;
        Sheet next =
            pointwise(depthwise(sheet, layers_[i].depth, halves ? firstKernel : kernel_, halves ? 2 : 1),
                      layers_[i].point, layers_[i].bias);
        keepPositive(next);
        if (!halves)
            std::transform(next.values.begin(), next.values.end(), sheet.values.begin(), next.values.begin(),
                           std::plus<>{});
        sheet = std::move(next);
    }
    return likely(pointwise(sheet, last_, lastBias_));
}

} // namespace undercowl::platform
