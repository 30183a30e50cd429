// What is read off a straightened wire before any colour is named, and off the photo around it. Only
// core/sight includes this. tests/sight/train learns from exactly these numbers.
#pragma once

#include <opencv2/core.hpp>

#include <array>
#include <cstddef>
#include <optional>

namespace undercowl::sight {

// The photo as a whole, in linear light, 0 to 1.
struct Surroundings {
    cv::Vec3d bright; // shades of grey of norm 6: near the white of the light
    cv::Vec3d mean;
    double dark{};                  // luminance that a tenth of the photo is below
    double middle{};                // that half is below
    double light{};                 // that all but a twentieth is below
    std::optional<cv::Vec3d> white; // what a perfect white would have: from a card
};

[[nodiscard]] Surroundings surroundingsOf(const cv::Mat& linear);

// Two groups of the wire's pixels: the larger is the base; the other a tracer, a highlight, a shadow or
// nothing.
struct Summary {
    cv::Vec3d base; // medians, linear light
    cv::Vec3d other;
    double otherShare{};  // of the pixels, 0 to 0.5
    double otherRows{};   // of the rows, in which it shows
    double otherRim{};    // of its pixels, that lie at the wire's rim
    double otherSpread{}; // how far it spreads across within a row, of the width
    double clipped{};     // of all pixels, left out because burnt out
};

// Nothing when fewer than 12 pixels are left to judge.
[[nodiscard]] std::optional<Summary> summarise(const cv::Mat& strip);

inline constexpr std::size_t colourInputs = 7;
inline constexpr std::size_t structureInputs = 20;
inline constexpr std::size_t insulations = 14;
using Shares =
    std::array<double, insulations>; // a probability for each colour, in the order of allInsulations

// What the judge of a single colour sees. No more than this: given the whole photo's figures too, it learned
// the scenes.
[[nodiscard]] std::array<double, colourInputs> colourInputsOf(const cv::Vec3d& colour,
                                                              const Surroundings& around);

// What the judge of the two groups sees: is the other one a tracer, is it the base, or is it light and shade?
[[nodiscard]] std::array<double, structureInputs>
structureInputsOf(const Summary& summary, const Shares& base, const Shares& other, double strength);

} // namespace undercowl::sight
