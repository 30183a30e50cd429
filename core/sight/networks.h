// The learned networks that find wires and judge their colours. Only core/sight includes this. They are
// learned by tests/sight/train/learn.py and built into the library: nothing is loaded from disk.
#pragma once

#include <opencv2/core.hpp>

#include <array>
#include <cstddef>

namespace undercowl::sight {

// What the finder tells of every second pixel of a picture, CV_8UC3, its sides multiples of 16: CV_32FC(6) of
// half the size: log odds of being on a wire, from there to its centre line (x, y) in eights of pixels,
// cosine and sine of twice the wire's direction, log of half the width in eights of pixels.
[[nodiscard]] cv::Mat fieldsOf(const cv::Mat& rgb);

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

// What one judge, below 'judges', makes of a strip: about a millisecond.
[[nodiscard]] ColourOdds colourOddsOf(std::size_t judge, const Strip& strip, const LightCodes& light,
                                      const White& white);

} // namespace undercowl::sight
