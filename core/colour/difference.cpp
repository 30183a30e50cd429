#include "core/colour/difference.h"

#include <cmath>
#include <numbers>

namespace undercowl::colour {
namespace {

constexpr double degree = std::numbers::pi / 180.0;

double hueDegrees(double a, double b) {
    if (a == 0.0 && b == 0.0)
        return 0.0;
    const double h = std::atan2(b, a) / degree;
    return h < 0.0 ? h + 360.0 : h;
}

double seventh(double x) {
    const double cube = x * x * x;
    return cube * cube * x;
}

// sqrt(C^7 / (C^7 + 25^7))
double chromaWeight(double c) {
    constexpr double pow25to7 = 6103515625.0;
    const double c7 = seventh(c);
    return std::sqrt(c7 / (c7 + pow25to7));
}

} // namespace

// The steps and names are those of Sharma, Wu and Dalal, equations 2 to 22.
double ciede2000(const Lab& one, const Lab& other) {
    const double meanChroma = 0.5 * (std::hypot(one.a, one.b) + std::hypot(other.a, other.b));
    const double g = 0.5 * (1.0 - chromaWeight(meanChroma));
    const double a1 = (1.0 + g) * one.a;
    const double a2 = (1.0 + g) * other.a;
    const double c1 = std::hypot(a1, one.b);
    const double c2 = std::hypot(a2, other.b);
    const double h1 = hueDegrees(a1, one.b);
    const double h2 = hueDegrees(a2, other.b);
    const bool grey = c1 * c2 == 0.0;

    double hueStep = grey ? 0.0 : h2 - h1;
    if (hueStep > 180.0)
        hueStep -= 360.0;
    else if (hueStep < -180.0)
        hueStep += 360.0;

    double meanHue = h1 + h2;
    if (!grey) {
        if (std::abs(h1 - h2) > 180.0)
            meanHue += meanHue < 360.0 ? 360.0 : -360.0;
        meanHue *= 0.5;
    }

    const double dL = other.l - one.l;
    const double dC = c2 - c1;
    const double dH = 2.0 * std::sqrt(c1 * c2) * std::sin(0.5 * hueStep * degree);
    const double meanL = 0.5 * (one.l + other.l);
    const double meanC = 0.5 * (c1 + c2);

    const double t =
        1.0 - 0.17 * std::cos((meanHue - 30.0) * degree) + 0.24 * std::cos(2.0 * meanHue * degree) +
        0.32 * std::cos((3.0 * meanHue + 6.0) * degree) - 0.20 * std::cos((4.0 * meanHue - 63.0) * degree);
    const double fromMid = (meanL - 50.0) * (meanL - 50.0);
    const double sL = 1.0 + 0.015 * fromMid / std::sqrt(20.0 + fromMid);
    const double sC = 1.0 + 0.045 * meanC;
    const double sH = 1.0 + 0.015 * meanC * t;
    const double blue = (meanHue - 275.0) / 25.0;
    const double rotation = -2.0 * chromaWeight(meanC) * std::sin(60.0 * std::exp(-blue * blue) * degree);
    const double l = dL / sL;
    const double c = dC / sC;
    const double h = dH / sH;
    return std::sqrt(l * l + c * c + h * h + rotation * c * h);
}

} // namespace undercowl::colour
