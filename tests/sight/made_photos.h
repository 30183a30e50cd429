// Photo files made in memory, for tests of the decoder.
#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <vector>

namespace made {

using Bytes = std::vector<std::byte>;

struct Colour {
    std::uint8_t r{};
    std::uint8_t g{};
    std::uint8_t b{};
};

using Paint = std::function<Colour(int x, int y)>;

// Four differently coloured quarters: red and green above blue and white.
[[nodiscard]] Paint quarters(int width, int height);

enum class JpegKind : std::uint8_t { Baseline, Progressive, Grey, Cmyk };

[[nodiscard]] Bytes jpeg(int width, int height, const Paint& paint, JpegKind kind = JpegKind::Baseline);

// The same file with an Exif block that says how to turn it; big- or little-endian.
[[nodiscard]] Bytes turned(const Bytes& jpeg, int orientation, bool bigEndian);

enum class PngKind : std::uint8_t { Rgb8, Rgb16, Grey8, Rgba8 };

[[nodiscard]] Bytes png(int width, int height, const Paint& paint, PngKind kind = PngKind::Rgb8);

} // namespace made
