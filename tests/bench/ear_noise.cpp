#include "tests/bench/ear_noise.h"

#include <array>
#include <cmath>
#include <random>

namespace undercowl::bench {
namespace {

using platform::earRate;
using platform::Samples;

double power(const Samples& samples) {
    double sum = 0;
    for (const float sample : samples)
        sum += static_cast<double>(sample) * sample;
    return samples.empty() ? 0 : sum / static_cast<double>(samples.size());
}

void scale(Samples& samples, double wanted) {
    const double is = power(samples);
    const auto gain = static_cast<float>(is > 0 ? std::sqrt(wanted / is) : 0);
    for (float& sample : samples)
        sample *= gain;
}

Samples brown(std::size_t count, std::mt19937& random) {
    std::normal_distribution<double> white;
    Samples out(count);
    double sum = 0;
    for (float& sample : out) {
        sum = 0.998 * sum + white(random);
        sample = static_cast<float>(sum);
    }
    return out;
}

// Pink noise by the sum of eight rows of random numbers, each held twice as long as the one before (R. F.
// Voss).
Samples pink(std::size_t count, std::mt19937& random) {
    std::normal_distribution<double> white;
    std::array<double, 8> rows{};
    Samples out(count);
    for (std::size_t i = 0; i < count; ++i) {
        double sum = white(random);
        for (std::size_t row = 0; row < rows.size(); ++row) {
            if (i % (std::size_t{1} << row) == 0)
                rows.at(row) = white(random);
            sum += rows.at(row);
        }
        out[i] = static_cast<float>(sum);
    }
    return out;
}

Samples engine(std::size_t count, std::mt19937& random) {
    const double middle = std::uniform_real_distribution<double>{45, 110}(random);
    std::normal_distribution<double> wander{0, 0.002};
    double pitch = 1;
    double phase = 0;
    Samples saw(count);
    for (float& sample : saw) {
        pitch += wander(random) * 0.05 + (1 - pitch) * 0.0005;
        phase += middle * pitch / earRate;
        phase -= std::floor(phase);
        sample = static_cast<float>(2 * phase - 1);
    }
    scale(saw, 0.5);
    Samples broad = pink(count, random);
    scale(broad, 0.5);
    for (std::size_t i = 0; i < count; ++i)
        saw[i] += broad[i];
    return saw;
}

} // namespace

Samples under(Noise noise, double decibels, const Samples& speech, unsigned seed) {
    constexpr std::size_t margin = earRate / 4;
    Samples out(speech.size() + 2 * margin);
    if (noise != Noise::None) {
        std::mt19937 random{seed};
        out = noise == Noise::Brown ? brown(out.size(), random) : engine(out.size(), random);
        scale(out, power(speech) * std::pow(10, -decibels / 10));
    }
    for (std::size_t i = 0; i < speech.size(); ++i)
        out[i + margin] += speech[i];
    return out;
}

} // namespace undercowl::bench
