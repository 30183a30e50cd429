#include "core/sight/nets.h"

#include <algorithm>
#include <cmath>
#include <span>
#include <vector>

namespace undercowl::sight {
namespace {

#include "core/sight/colour_nets.inc"

// The mean answer of several networks with one hidden layer. Weights: for each network the hidden layer's
// rows, the output's rows, the hidden biases, the output's biases.
std::vector<double> answer(std::span<const double> inputs, std::span<const float> mean,
                           std::span<const float> scale, std::span<const float> weights, std::size_t nets,
                           std::size_t hidden, std::size_t outputs) {
    std::vector<double> sum(outputs, 0.0);
    const std::size_t n = inputs.size();
    const std::size_t size = hidden * n + outputs * hidden + hidden + outputs;
    for (std::size_t net = 0; net < nets; ++net) {
        const auto w = weights.subspan(net * size, size);
        const auto first = w.first(hidden * n);
        const auto second = w.subspan(hidden * n, outputs * hidden);
        const auto firstBias = w.subspan(hidden * n + outputs * hidden, hidden);
        const auto secondBias = w.last(outputs);
        std::vector<double> middle(hidden);
        for (std::size_t h = 0; h < hidden; ++h) {
            double v = double(firstBias[h]);
            for (std::size_t i = 0; i < n; ++i)
                v += double(first[h * n + i]) * (inputs[i] - double(mean[i])) / double(scale[i]);
            middle[h] = std::max(0.0, v);
        }
        std::vector<double> out(outputs);
        for (std::size_t o = 0; o < outputs; ++o) {
            out[o] = double(secondBias[o]);
            for (std::size_t h = 0; h < hidden; ++h)
                out[o] += double(second[o * hidden + h]) * middle[h];
        }
        const double largest = *std::max_element(out.begin(), out.end());
        double total = 0;
        for (double& v : out)
            total += v = std::exp(v - largest);
        for (std::size_t o = 0; o < outputs; ++o)
            sum[o] += out[o] / total / double(nets);
    }
    return sum;
}

} // namespace

Shares colourShares(const cv::Vec3d& colour, const Surroundings& around) {
    const auto inputs = colourInputsOf(colour, around);
    const auto out =
        answer(inputs, colourMean, colourScale, colourWeights, colourNets, colourHidden, insulations);
    Shares shares{};
    std::copy(out.begin(), out.end(), shares.begin());
    return shares;
}

Structure structureOf(const Summary& summary, const Shares& base, const Shares& other, double strength) {
    const auto inputs = structureInputsOf(summary, base, other, strength);
    const auto out =
        answer(inputs, structureMean, structureScale, structureWeights, structureNets, structureHidden, 3);
    return {out[0], out[1], out[2]};
}

} // namespace undercowl::sight
