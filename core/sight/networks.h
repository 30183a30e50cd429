// The learned networks that find wires and judge their colours. Only core/sight includes this. They are
// learned by tests/sight/train/learn.py and built into the library: nothing is loaded from disk.
#pragma once

#include <opencv2/core.hpp>

#include <array>
#include <cstddef>
#include <functional>
#include <vector>

namespace undercowl::sight {

// What is told of every second pixel of a picture: cell (row j, column i) stands for the place (2i + 1.5,
// 2j + 1.5). CV_32FC1 each, all of one size.
struct Fields {
    cv::Mat wire;       // probability of being on a wire, 0 to 1
    cv::Mat dx, dy;     // from there to the wire's centre line, pixels
    cv::Mat cos2, sin2; // of twice the wire's direction
    cv::Mat halfWidth;  // pixels
};

// 'rgb' is CV_8UC3. Takes a few tenths of a second for a megapixel. 'cancelled' is asked between tiles; when
// it answers true, what came so far is returned with the rest empty (no wire).
[[nodiscard]] Fields findFields(const cv::Mat& rgb, const std::function<bool()>& cancelled);

// A wire pulled straight: rows across it, columns along it.
inline constexpr int stripAcross = 20;
inline constexpr int stripAlong = 128;
inline constexpr double stripSpan = 1.4;       // widths that the rows cover
inline constexpr double stripStep = 1.0 / 8.0; // widths from column to column

inline constexpr std::size_t judges = 3;
inline constexpr std::size_t insulations = 14;

// What each judge makes of the light of the whole picture: 16 numbers each.
using LightCodes = std::array<std::array<float, 16>, judges>;
[[nodiscard]] LightCodes lightOf(const cv::Mat& rgb);

// What a perfect white would have: log of red to green, log of blue to green, log of green, in linear light,
// and 1; all 0 where it is not known.
using White = std::array<float, 4>;

// Log odds of each base, then of each tracer, the last for none; by each judge.
using ColourOdds = std::array<float, insulations + insulations + 1>;

struct Strip {
    cv::Mat rgb;  // CV_8UC3, stripAcross x stripAlong
    cv::Mat seen; // CV_8UC1, 255 where it belongs to the wire's neighbourhood and 0 beyond what was followed
};

// Asks every 'step'-th judge.
[[nodiscard]] std::vector<ColourOdds> colourOddsOf(const Strip& strip, const LightCodes& light,
                                                   const White& white, std::size_t step = 1);

} // namespace undercowl::sight
