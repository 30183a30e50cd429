// From words to what was meant.
#pragma once

#include "core/talk/intent.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <tl/expected.hpp>

namespace undercowl::talk {

// Why nothing was taken. English for the command line; the kind is for a shell that speaks another language.
struct Refusal {
    enum class Kind : std::uint8_t {
        Unknown,     // not a sentence of the grammar
        Implausible, // a number that the reading cannot have: likely misheard
    };
    Kind kind{};
    std::string message; // "45 bar is not believed of a tyre (0.3 to 6 bar): say it again"
};

// Lower-case words with single blanks, as the recogniser gives them. The whole sentence must fit: a word too
// many is refused, nothing is guessed.
[[nodiscard]] tl::expected<Intent, Refusal> parse(std::string_view text);

} // namespace undercowl::talk
