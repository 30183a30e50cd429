// What differs between two answers for one half: the map as found against the map as refitted, say.
#pragma once

#include "core/wiring/map.h"

#include <cstdint>
#include <string_view>
#include <vector>

namespace undercowl::wiring {

enum class DifferenceKind : std::uint8_t { Swapped, Missing, Extra, Different };

struct Difference {
    DifferenceKind kind{};
    std::vector<PlaceKey> places; // two for Swapped, otherwise one

    friend bool operator==(const Difference&, const Difference&) = default;
};

// Colours and, where both sides know it, terminals decide. In order of the first place.
[[nodiscard]] std::vector<Difference> compare(const Gathering& gathering, Half half, Answer before,
                                              Answer after);

[[nodiscard]] std::string_view code(DifferenceKind kind); // "swapped"

} // namespace undercowl::wiring
