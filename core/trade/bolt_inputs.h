// What bolt-torque and bolt-preload ask alike.
#pragma once

#include "core/trade/registry.h"
#include "core/trade/threads.h"

#include <string>
#include <tl/expected.hpp>
#include <vector>

namespace undercowl::trade {

struct Bolt {
    Thread thread;
    PropertyClass grade;
    double nutFactor{};
    std::string friction; // how the nut factor came about, for the working
};

[[nodiscard]] std::vector<Input> boltInputs();
[[nodiscard]] tl::expected<Bolt, Problem> readBolt(const Given& given);
[[nodiscard]] std::vector<std::string> boltSources();
[[nodiscard]] std::vector<std::string> boltCautions();

} // namespace undercowl::trade
