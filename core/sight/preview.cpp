#include "core/sight/preview.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <cstdlib>

namespace undercowl::sight {
namespace {

constexpr std::size_t channels = 3;

std::size_t index(int x, int y, int width) {
    return static_cast<std::size_t>(y) * static_cast<std::size_t>(width) + static_cast<std::size_t>(x);
}

// Averages over areas: every pixel of the smaller picture is the mean of the pixels that it covers.
struct Small {
    std::vector<std::array<float, channels>> rgb; // linear light or as coded, whatever went in
    int width{};
    int height{};
};

template<typename Level>
Small reduce(const Preview& picture, int longest, const Level& level) {
    const int longer = std::max(picture.width, picture.height);
    const int step = std::max(1, (longer + longest - 1) / std::max(1, longest));
    Small small;
    small.width = picture.width / step;
    small.height = picture.height / step;
    small.rgb.resize(static_cast<std::size_t>(small.width) * static_cast<std::size_t>(small.height));
    const auto count = static_cast<float>(step * step);
    for (int y = 0; y < small.height; ++y)
        for (int x = 0; x < small.width; ++x) {
            auto& sum = small.rgb[index(x, y, small.width)];
            for (int down = 0; down < step; ++down) {
                const auto* in =
                    picture.rgb.data() + channels * index(x * step, y * step + down, picture.width);
                for (int across = 0; across < step; ++across)
                    for (std::size_t c = 0; c < channels; ++c)
                        sum[c] += level(*in++);
            }
            for (float& value : sum)
                value /= count;
        }
    return small;
}

// IEC 61966-2-1.
const std::array<float, 256>& linearLevels() {
    static const auto table = [] {
        std::array<float, 256> levels{};
        for (std::size_t i = 0; i < levels.size(); ++i) {
            const double coded = static_cast<double>(i) / 255.0;
            levels[i] =
                static_cast<float>(coded <= 0.04045 ? coded / 12.92 : std::pow((coded + 0.055) / 1.055, 2.4));
        }
        return levels;
    }();
    return table;
}

double mean(const Grey& picture) {
    double sum = 0;
    for (const std::uint8_t level : picture.levels)
        sum += level;
    return picture.levels.empty() ? 0 : sum / static_cast<double>(picture.levels.size());
}

// Steepness of the edges across upright or level lines. Three lines are taken together: that softens no edge
// that crosses them, and leaves less of the noise.
std::optional<double> steepness(const Grey& picture, bool upright) {
    constexpr int together = 3;
    constexpr int window =
        12; // pixels in which an edge lies: a wire's rim in a preview, also when it is blurred
    constexpr int contrast = 40; // of 255: three times what sensors add in dim light, from memory
    const int length = upright ? picture.width : picture.height;
    const int lines = upright ? picture.height : picture.width;
    std::vector<int> levels(static_cast<std::size_t>(length));
    double sum = 0;
    int edges = 0;
    for (int line = 0; line + together <= lines; line += together) {
        for (int i = 0; i < length; ++i) {
            int& level = levels[static_cast<std::size_t>(i)];
            level = 0;
            for (int k = line; k < line + together; ++k)
                level += upright ? picture.at(i, k) : picture.at(k, i);
        }
        for (int from = 0; from + window <= length; from += window / 2) {
            const auto* at = levels.data() + from;
            const auto [low, high] = std::minmax_element(at, at + window);
            if (*high - *low < together * contrast)
                continue;
            int steepest = 0;
            for (int i = 1; i < window; ++i)
                steepest = std::max(steepest, std::abs(at[i] - at[i - 1]));
            sum += static_cast<double>(steepest) / (*high - *low);
            ++edges;
        }
    }
    constexpr int fewest = 20;
    if (edges < fewest)
        return std::nullopt;
    return sum / edges;
}

using Light = std::array<double, channels>; // relative to green

// The colour of what is brightest in its weakest channel: white patch, after Land and McCann 1971, over an
// area since a single pixel is a glint. Held to what a camera leaves of a lamp's colour once it has balanced
// its picture (common practice, no source; chosen on tests/photos): beyond that it is the thing that is
// coloured.
Light lightOf(const Small& picture) {
    constexpr std::size_t brightest = 80; // one pixel in so many
    std::vector<std::array<float, channels>> pixels = picture.rgb;
    const std::size_t count = std::max<std::size_t>(1, pixels.size() / brightest);
    const auto end = pixels.begin() + static_cast<std::ptrdiff_t>(count);
    std::ranges::partial_sort(
        pixels, end, [](const auto& a, const auto& b) { return std::ranges::min(a) > std::ranges::min(b); });
    Light sum{};
    for (auto pixel = pixels.begin(); pixel != end; ++pixel)
        for (std::size_t c = 0; c < channels; ++c)
            sum[c] += (*pixel)[c];
    if (sum[1] <= 0)
        return {1, 1, 1};
    return {std::clamp(sum[0] / sum[1], 0.85, 1.15), 1.0, std::clamp(sum[2] / sum[1], 0.75, 1.25)};
}

bool colourless(const std::array<float, channels>& pixel, const Light& light) {
    constexpr double chroma =
        0.2; // of the natural logarithm, a fifth more or less of one channel than of another
    if (std::ranges::min(pixel) <= 0)
        return false;
    const double red = std::log(pixel[0] / pixel[1] / light[0]);
    const double blue = std::log(pixel[2] / pixel[1] / light[2]);
    return std::abs(red) < chroma && std::abs(blue) < chroma && std::abs(red - blue) < chroma;
}

} // namespace

Grey greyOf(const Preview& picture, int longest) {
    const Small small =
        reduce(picture, longest, [](std::uint8_t coded) { return static_cast<float>(coded); });
    Grey grey{{}, small.width, small.height};
    grey.levels.reserve(small.rgb.size());
    for (const auto& pixel : small.rgb)
        grey.levels.push_back(static_cast<std::uint8_t>(
            std::lround(0.2126F * pixel[0] + 0.7152F * pixel[1] + 0.0722F * pixel[2])));
    return grey;
}

Grey middleOf(const Grey& picture) {
    Grey middle{{}, picture.width / 2, picture.height / 2};
    const int left = picture.width / 4;
    const int top = picture.height / 4;
    middle.levels.reserve(static_cast<std::size_t>(middle.width) * static_cast<std::size_t>(middle.height));
    for (int y = 0; y < middle.height; ++y)
        for (int x = 0; x < middle.width; ++x)
            middle.levels.push_back(static_cast<std::uint8_t>(picture.at(left + x, top + y)));
    return middle;
}

std::optional<double> sharpness(const Grey& picture) {
    const auto upright = steepness(picture, true);
    const auto level = steepness(picture, false);
    if (!upright || !level)
        return upright ? upright : level;
    return std::min(*upright, *level);
}

double moved(const Grey& before, const Grey& now) {
    const double dark = mean(now);
    const double gain = dark > 0 ? mean(before) / dark : 1.0; // exposure that settles is no movement
    constexpr double least = 3.0;                             // levels a pixel: less is noise
    double change = 0;
    double slope = 0;
    for (int y = 1; y + 1 < before.height; ++y)
        for (int x = 1; x + 1 < before.width; ++x) {
            const auto both = [&](int column, int row) {
                return (before.at(column, row) + gain * now.at(column, row)) / 2;
            };
            const double steep =
                std::hypot(both(x + 1, y) - both(x - 1, y), both(x, y + 1) - both(x, y - 1)) / 2;
            if (steep < least)
                continue;
            change += std::abs(gain * now.at(x, y) - before.at(x, y));
            slope += steep;
        }
    if (slope <= 0)
        return 0;
    // Only movement across an edge changes a pixel: over all directions 2 / pi of it.
    return 1.5708 * change / slope / before.width;
}

bool whiteInView(const Preview& picture) {
    constexpr int longest = 96;
    const auto& levels = linearLevels();
    const Small small = reduce(picture, longest, [&](std::uint8_t coded) { return levels[coded]; });
    if (small.rgb.empty())
        return false;
    std::vector<float> brightness;
    brightness.reserve(small.rgb.size());
    for (const auto& pixel : small.rgb)
        brightness.push_back(std::ranges::max(pixel));
    std::vector<float> sorted = brightness;
    const auto high = sorted.begin() + static_cast<std::ptrdiff_t>(sorted.size() * 98 / 100);
    std::ranges::nth_element(sorted, high);
    const double bright = 0.4 * *high; // what reflects less than that share of the brightest is no white
    constexpr double leastLight = 0.06;
    constexpr double share = 0.01;
    // The camera may have balanced the light well, or left some of its colour.
    for (const Light& light : {Light{1, 1, 1}, lightOf(small)}) {
        std::size_t white = 0;
        for (std::size_t i = 0; i < small.rgb.size(); ++i)
            if (brightness[i] >= std::max(bright, leastLight) && colourless(small.rgb[i], light))
                ++white;
        if (static_cast<double>(white) >= share * static_cast<double>(small.rgb.size()))
            return true;
    }
    return false;
}

} // namespace undercowl::sight
