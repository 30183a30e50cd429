// What changed between the wires of two strokes, before and after.
#pragma once

#include "core/sight/reading.h"

#include <cstdint>
#include <string_view>
#include <vector>

namespace undercowl::sight {

enum class ChangeKind : std::uint8_t { Swapped, Missing, Extra, Different };
enum class CompareVerdict : std::uint8_t { Same, Changed, CannotTell };

[[nodiscard]] std::string_view code(ChangeKind kind);        // "swapped"
[[nodiscard]] std::string_view code(CompareVerdict verdict); // "cannot tell"

struct Change {
    ChangeKind kind{};
    std::vector<int> places; // from 1, along the before stroke; for Extra along the after stroke
};

struct Comparison {
    CompareVerdict verdict{};
    std::vector<Change> changes; // only when the verdict is Changed
    std::vector<WireReading> before;
    std::vector<WireReading> after;
};

// Compares two rows of readings in stroke order. A change of light is not a change of wire: the posteriors
// are compared, not the pixels. Twins cannot be told apart here; a swap among them is 'same'.
[[nodiscard]] Comparison compare(std::vector<WireReading> before, std::vector<WireReading> after);

} // namespace undercowl::sight
