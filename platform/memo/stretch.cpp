#include "platform/memo/stretch.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace undercowl::platform {

namespace {

constexpr double pieceSeconds = 0.03;
constexpr double searchSeconds = 0.008;

// How alike two stretches are, by every other sample: enough for speech.
double alike(const short* a, const short* b, std::size_t length) {
    double product = 0;
    double power = 1;
    for (std::size_t i = 0; i < length; i += 2) {
        product += static_cast<double>(a[i]) * b[i];
        power += static_cast<double>(b[i]) * b[i];
    }
    return product / std::sqrt(power);
}

} // namespace

std::vector<short> stretched(std::span<const short> samples, int rate, double pace) {
    const double wanted = std::clamp(pace, 0.5, 3.0);
    const auto half = static_cast<std::size_t>(pieceSeconds * rate / 2);
    const auto search = static_cast<std::size_t>(searchSeconds * rate);
    if (wanted == 1 || half == 0 || samples.size() < 4 * half + 2 * search)
        return {samples.begin(), samples.end()};
    std::vector<double> fade(half);
    for (std::size_t i = 0; i < half; ++i)
        fade[i] = 0.5 - 0.5 * std::cos(std::numbers::pi * static_cast<double>(i) / static_cast<double>(half));
    std::vector<short> out(samples.begin(), samples.begin() + static_cast<std::ptrdiff_t>(half));
    std::size_t last = 0; // where the piece before began
    for (std::size_t piece = 1;; ++piece) {
        const auto ideal = static_cast<std::size_t>(static_cast<double>(piece * half) * wanted);
        const std::size_t from = ideal > search ? ideal - search : 0;
        const std::size_t to = ideal + search;
        if (to + 2 * half > samples.size() || last + 2 * half > samples.size())
            break;
        // What would have followed the piece before is what this one should begin like.
        const short* follows = samples.data() + last + half;
        std::size_t best = from;
        double most = alike(follows, samples.data() + from, half);
        for (std::size_t at = from + 1; at <= to; ++at)
            if (const double fit = alike(follows, samples.data() + at, half); fit > most) {
                most = fit;
                best = at;
            }
        for (std::size_t i = 0; i < half; ++i)
            out.push_back(
                static_cast<short>(std::lround(follows[i] * (1 - fade[i]) + samples[best + i] * fade[i])));
        last = best;
    }
    return out;
}

} // namespace undercowl::platform
