// How the words of the grammar sound, in the phones of the English acoustic model (ARPAbet without stress).
// Only these words can be heard, so no large dictionary is needed.
#pragma once

#include <span>
#include <string_view>

namespace undercowl::platform {

struct Pronunciation {
    std::string_view word;
    std::string_view phones; // "T AO R K"
};

// Sorted by word; a word may come several times.
[[nodiscard]] std::span<const Pronunciation> pronunciations();

} // namespace undercowl::platform
