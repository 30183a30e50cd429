#include "core/colour/spaces.h"

#include <algorithm>
#include <cmath>

namespace undercowl::colour {
namespace {

// IEC 61966-2-1 with the seven digits that reproduce the published Lab of the corners.
constexpr Matrix3 rgbToXyz{{{0.4124564, 0.3575761, 0.1804375},
                            {0.2126729, 0.7151522, 0.0721750},
                            {0.0193339, 0.1191920, 0.9503041}}};
constexpr Matrix3 xyzToRgb{{{3.2404542, -1.5371385, -0.4985314},
                            {-0.9692660, 1.8760108, 0.0415560},
                            {0.0556434, -0.2040259, 1.0572252}}};

// CIE 15: the cube root gives way to a straight line below (6/29)^3.
constexpr double labEpsilon = 216.0 / 24389.0;
constexpr double labKappa = 24389.0 / 27.0;

double labCurve(double t) {
    return t > labEpsilon ? std::cbrt(t) : (labKappa * t + 16.0) / 116.0;
}

double labCurveBack(double f) {
    const double cube = f * f * f;
    return cube > labEpsilon ? cube : (116.0 * f - 16.0) / labKappa;
}

std::uint8_t toByte(double light) {
    return static_cast<std::uint8_t>(std::lround(255.0 * encodeSrgb(std::clamp(light, 0.0, 1.0))));
}

} // namespace

double decodeSrgb(double encoded) {
    return encoded <= 0.04045 ? encoded / 12.92 : std::pow((encoded + 0.055) / 1.055, 2.4);
}

double encodeSrgb(double light) {
    return light <= 0.0031308 ? 12.92 * light : 1.055 * std::pow(light, 1.0 / 2.4) - 0.055;
}

LinearRgb toLinear(Srgb8 colour) {
    return {decodeSrgb(colour.r / 255.0), decodeSrgb(colour.g / 255.0), decodeSrgb(colour.b / 255.0)};
}

Srgb8 toSrgb8(const LinearRgb& colour) {
    return {toByte(colour.r), toByte(colour.g), toByte(colour.b)};
}

Xyz toXyz(const LinearRgb& colour) {
    const auto v = multiply(rgbToXyz, colour.r, colour.g, colour.b);
    return {v[0], v[1], v[2]};
}

LinearRgb toLinear(const Xyz& colour) {
    const auto v = multiply(xyzToRgb, colour.x, colour.y, colour.z);
    return {v[0], v[1], v[2]};
}

Lab toLab(const Xyz& colour, const Xyz& white) {
    const double fx = labCurve(colour.x / white.x);
    const double fy = labCurve(colour.y / white.y);
    const double fz = labCurve(colour.z / white.z);
    return {116.0 * fy - 16.0, 500.0 * (fx - fy), 200.0 * (fy - fz)};
}

Xyz toXyz(const Lab& colour, const Xyz& white) {
    const double fy = (colour.l + 16.0) / 116.0;
    return {white.x * labCurveBack(fy + colour.a / 500.0), white.y * labCurveBack(fy),
            white.z * labCurveBack(fy - colour.b / 200.0)};
}

Lab toLab(const LinearRgb& colour) {
    return toLab(toXyz(colour));
}

Lab toLab(Srgb8 colour) {
    return toLab(toLinear(colour));
}

} // namespace undercowl::colour
