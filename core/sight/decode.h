// Decoding, one function for each format. Only core/sight includes this.
#pragma once

#include "core/sight/photo.h"

#include <tl/expected.hpp>

#include <opencv2/core.hpp>

#include <cstddef>
#include <filesystem>
#include <span>

namespace undercowl::sight {

// The longer side in memory. Wires in a phone photo are 10 to 60 px wide at this size; more pixels cost time
// and memory and add no colour.
inline constexpr int workingSide = 1440;
inline constexpr double largestMegapixels = 120.0;

struct Decoded {
    cv::Mat rgb; // as stored, not turned
    int width{}; // full size, as stored
    int height{};
    int orientation{1};
};

[[nodiscard]] bool isJpeg(std::span<const std::byte> head);
[[nodiscard]] bool isPng(std::span<const std::byte> head);

using DecodeResult = tl::expected<Decoded, PhotoProblem>;

// Needs about the file and a working-size picture in memory; a progressive file also needs its coefficients.
[[nodiscard]] DecodeResult decodeJpeg(std::span<const std::byte> file);

// Needs three bytes a pixel: PNG cannot be reduced while decoding.
[[nodiscard]] DecodeResult decodePng(std::span<const std::byte> file);

[[nodiscard]] PhotoProblem tooLarge(int width, int height);

// Reduces to the working side by area averaging; smaller pictures stay as they are.
[[nodiscard]] cv::Mat toWorkingSize(const cv::Mat& rgb);

} // namespace undercowl::sight
