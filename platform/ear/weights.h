// The learned weights, built into the library.
#pragma once

#include <cstddef>
#include <span>

namespace undercowl::platform {

inline constexpr std::size_t earNets = 2;

// Of the network with this number, from 0.
[[nodiscard]] std::span<const unsigned char> earWeights(std::size_t net);

} // namespace undercowl::platform
