// The learned weights, as ONNX files built into the library. Only core/sight includes this.
#pragma once

#include <cstddef>
#include <span>

namespace undercowl::sight {

[[nodiscard]] std::span<const unsigned char> finderWeights();
[[nodiscard]] std::span<const unsigned char> lightWeights(std::size_t judge);  // 0 to 2
[[nodiscard]] std::span<const unsigned char> colourWeights(std::size_t judge); // 0 to 2

} // namespace undercowl::sight
