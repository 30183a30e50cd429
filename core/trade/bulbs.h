// Bulbs by their type designation.
#pragma once

#include <span>
#include <string_view>

namespace undercowl::trade {

struct Bulb {
    std::string_view type; // "P21W"
    double watts;          // rated; of the larger filament where two are never lit together
    double second;         // rated, of the other filament; 0 if there is none
    bool both;             // both filaments can be lit at once (tail and stop)
    std::string_view cap;
    bool published; // read in UNECE R37; else from memory, advisory
};

[[nodiscard]] std::span<const Bulb> bulbs();

} // namespace undercowl::trade
