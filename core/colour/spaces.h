// Colour spaces: sRGB (IEC 61966-2-1), CIE XYZ and CIELAB (CIE 15), 2 degree observer, white point D65
// throughout.
//
// All functions are pure and total: NaN in gives NaN out, values outside a gamut are carried on, not clipped.
#pragma once

#include <array>
#include <cstdint>

namespace undercowl::colour {

// Encoded sRGB, 0 to 255 a channel.
struct Srgb8 {
    std::uint8_t r{};
    std::uint8_t g{};
    std::uint8_t b{};

    friend bool operator==(const Srgb8&, const Srgb8&) = default;
};

// Light in the sRGB primaries, proportional to energy; 1 is the display's white.
struct LinearRgb {
    double r{};
    double g{};
    double b{};
};

// CIE tristimulus values, Y = 1 for white.
struct Xyz {
    double x{};
    double y{};
    double z{};
};

// CIELAB, L 0 to 100.
struct Lab {
    double l{};
    double a{};
    double b{};
};

using Matrix3 = std::array<std::array<double, 3>, 3>;

[[nodiscard]] constexpr std::array<double, 3> multiply(const Matrix3& m, double x, double y, double z) {
    return {m[0][0] * x + m[0][1] * y + m[0][2] * z, m[1][0] * x + m[1][1] * y + m[1][2] * z,
            m[2][0] * x + m[2][1] * y + m[2][2] * z};
}

// XYZ of D65 as the sRGB matrix gives it for (1, 1, 1).
inline constexpr Xyz d65White{0.9504700, 1.0000001, 1.0888300};

// The transfer curve of sRGB, encoded 0 to 1 to light 0 to 1 and back.
[[nodiscard]] double decodeSrgb(double encoded);
[[nodiscard]] double encodeSrgb(double light);

[[nodiscard]] LinearRgb toLinear(Srgb8 colour);
[[nodiscard]] Srgb8 toSrgb8(const LinearRgb& colour); // rounds, and clips to the gamut

[[nodiscard]] Xyz toXyz(const LinearRgb& colour);
[[nodiscard]] LinearRgb toLinear(const Xyz& colour);

[[nodiscard]] Lab toLab(const Xyz& colour, const Xyz& white = d65White);
[[nodiscard]] Xyz toXyz(const Lab& colour, const Xyz& white = d65White);

[[nodiscard]] Lab toLab(const LinearRgb& colour);
[[nodiscard]] Lab toLab(Srgb8 colour);

} // namespace undercowl::colour
