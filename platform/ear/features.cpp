#include "platform/ear/features.h"

#include "platform/ear/sound.h"

#include <kiss_fftr.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <memory>
#include <numbers>

namespace undercowl::platform {
namespace {

constexpr std::size_t window = 512;
constexpr std::size_t hop = 160;
constexpr std::size_t bins = window / 2 + 1;
constexpr double lowestHertz = 60;
constexpr double highestHertz = 7600;
constexpr float floorPower = 1e-5F; // of a sound of mean power 1: 50 dB below it nothing is heard
constexpr float scale = 0.5F;

double mel(double hertz) {
    return 2595 * std::log10(1 + hertz / 700);
}

double hertz(double mels) {
    return 700 * (std::pow(10, mels / 2595) - 1);
}

struct Band {
    std::size_t first{}; // bin
    std::vector<float> weights;
};

std::vector<Band> makeBands() {
    const auto edge = [](std::size_t i) {
        const double part = static_cast<double>(i) / (earBands + 1);
        return hertz(mel(lowestHertz) + part * (mel(highestHertz) - mel(lowestHertz)));
    };
    std::vector<Band> bands(earBands);
    for (std::size_t b = 0; b < earBands; ++b) {
        std::array<double, bins> weights{};
        double sum = 0;
        for (std::size_t i = 0; i < bins; ++i) {
            const double at = static_cast<double>(i) * earRate / window;
            const double rising = (at - edge(b)) / (edge(b + 1) - edge(b));
            const double falling = (edge(b + 2) - at) / (edge(b + 2) - edge(b + 1));
            weights.at(i) = std::max(0.0, std::min(rising, falling));
            sum += weights.at(i);
        }
        const auto touched = [](double weight) { return weight > 0; };
        const auto* const begin = std::find_if(weights.cbegin(), weights.cend(), touched);
        const auto* const end = std::find_if_not(begin, weights.cend(), touched);
        bands[b].first = static_cast<std::size_t>(begin - weights.cbegin());
        for (const auto* weight = begin; weight != end; ++weight)
            bands[b].weights.push_back(static_cast<float>(*weight / sum));
    }
    return bands;
}

std::array<float, window> makeWindow() {
    std::array<float, window> shape{};
    for (std::size_t i = 0; i < window; ++i)
        shape.at(i) =
            static_cast<float>(0.5 - 0.5 * std::cos(2 * std::numbers::pi * static_cast<double>(i) / window));
    return shape;
}

struct Free {
    void operator()(kiss_fftr_state* plan) const { kiss_fftr_free(plan); }
};

} // namespace

Features features(std::span<const float> samples) {
    static const std::vector<Band> bands = makeBands();
    static const std::array<float, window> shape = makeWindow();
    Features out;
    if (samples.size() < window)
        return out;
    double power = 0;
    for (const float sample : samples)
        power += static_cast<double>(sample) * sample;
    const auto gain =
        static_cast<float>(1 / std::max(1e-9, std::sqrt(power / static_cast<double>(samples.size()))));
    float windowPower = 0;
    for (const float value : shape)
        windowPower += value * value;

    out.frames = 1 + (samples.size() - window) / hop;
    out.values.resize(earBands * out.frames);
    const std::unique_ptr<kiss_fftr_state, Free> plan{kiss_fftr_alloc(window, 0, nullptr, nullptr)};
    std::array<float, window> piece{};
    std::array<kiss_fft_cpx, bins> spectrum{};
    std::array<float, bins> powers{};
    for (std::size_t frame = 0; frame < out.frames; ++frame) {
        for (std::size_t i = 0; i < window; ++i)
            piece.at(i) = samples[frame * hop + i] * gain * shape.at(i);
        kiss_fftr(plan.get(), piece.data(), spectrum.data());
        for (std::size_t i = 0; i < bins; ++i)
            powers.at(i) =
                (spectrum.at(i).r * spectrum.at(i).r + spectrum.at(i).i * spectrum.at(i).i) / windowPower;
        for (std::size_t b = 0; b < earBands; ++b) {
            float sum = floorPower;
            for (std::size_t i = 0; i < bands[b].weights.size(); ++i)
                sum += bands[b].weights[i] * powers.at(bands[b].first + i);
            out.values[b * out.frames + frame] = std::log(sum);
        }
    }
    for (std::size_t b = 0; b < earBands; ++b) {
        const auto row = std::span{out.values}.subspan(b * out.frames, out.frames);
        double sum = 0;
        for (const float value : row)
            sum += value;
        const auto mean = static_cast<float>(sum / static_cast<double>(out.frames));
        for (float& value : row)
            value = (value - mean) * scale;
    }
    return out;
}

} // namespace undercowl::platform
