// A reliability plot: how often answers of each probability were right.
#pragma once

#include <span>
#include <string>

namespace undercowl::tests {

// Answers whose probability lies in one tenth.
struct ReliabilityBin {
    int answers{};
    double probability{}; // sum over them
    int right{};
};

// As SVG: one disc for each tenth with answers, its area by their number, over the diagonal on which an
// honest reader lies; the bars from the disc to the diagonal are what the calibration error sums. 'error' is
// written below.
[[nodiscard]] std::string reliabilityPlot(std::span<const ReliabilityBin> bins, double error);

} // namespace undercowl::tests
