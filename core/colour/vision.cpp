#include "core/colour/vision.h"

#include "core/colour/difference.h"

#include <algorithm>

namespace undercowl::colour {
namespace {

constexpr Matrix3 identity{{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};

struct Steps {
    Matrix3 half;
    Matrix3 full;
};

// Machado, Oliveira and Fernandes 2009, severity 0.5 and 1.0, for linear RGB.
constexpr Steps protan{
    {{{0.458064, 0.679578, -0.137642}, {0.092785, 0.846313, 0.060902}, {-0.007494, -0.016807, 1.024301}}},
    {{{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}}}};
constexpr Steps deutan{
    {{{0.547494, 0.607765, -0.155259}, {0.181692, 0.781742, 0.036566}, {-0.010410, 0.027275, 0.983136}}},
    {{{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}}}};
constexpr Steps tritan{
    {{{1.017277, 0.027029, -0.044306}, {-0.006113, 0.958479, 0.047634}, {0.006379, 0.248708, 0.744913}}},
    {{{1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}}}};

Matrix3 between(const Matrix3& one, const Matrix3& other, double share) {
    Matrix3 mixed{};
    for (std::size_t row = 0; row < 3; ++row)
        for (std::size_t column = 0; column < 3; ++column)
            mixed[row][column] = (1.0 - share) * one[row][column] + share * other[row][column];
    return mixed;
}

Matrix3 matrixFor(const Vision& vision) {
    const double severity = std::clamp(vision.severity, 0.0, 1.0);
    if (vision.deficiency == Deficiency::None)
        return identity;
    const Steps& steps = vision.deficiency == Deficiency::Protan   ? protan
                         : vision.deficiency == Deficiency::Deutan ? deutan
                                                                   : tritan;
    return severity <= 0.5 ? between(identity, steps.half, 2.0 * severity)
                           : between(steps.half, steps.full, 2.0 * severity - 1.0);
}

} // namespace

LinearRgb asSeen(const LinearRgb& colour, const Vision& vision) {
    const auto v = multiply(matrixFor(vision), colour.r, colour.g, colour.b);
    return {v[0], v[1], v[2]};
}

double differenceAsSeen(const Lab& one, const Lab& other, const Vision& vision) {
    const auto seen = [&](const Lab& lab) { return toLab(asSeen(toLinear(toXyz(lab)), vision)); };
    return ciede2000(seen(one), seen(other));
}

} // namespace undercowl::colour
