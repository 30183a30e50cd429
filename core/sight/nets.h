// The learned judges of colour and of stripes: small networks, learned by tests/sight/train/learn_colours.py.
// Only core/sight includes this.
#pragma once

#include "core/sight/summary.h"

namespace undercowl::sight {

// Which colour it is.
[[nodiscard]] Shares colourShares(const cv::Vec3d& colour, const Surroundings& around);

// What the two groups of a wire's pixels are. Sums to 1.
struct Structure {
    double plain{};     // the other group is light and shade
    double tracer{};    // the other group is the tracer
    double exchanged{}; // the larger group is the tracer
};
[[nodiscard]] Structure structureOf(const Summary& summary, const Shares& base, const Shares& other,
                                    double strength);

} // namespace undercowl::sight
