// What may be said besides numbers: units and what is plausible in them, colours, terminals, functions. The
// grammar, the parser and the sentences are made from the same lists.
#pragma once

#include "core/talk/intent.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::talk {

// One unit in which a reading may be said, and what is believed in it. The bounds are common practice, no
// source: wide enough for every scooter and small motorcycle, narrow enough to tell that a number was
// misheard.
struct SpokenUnit {
    Measured what{};
    std::string_view symbol; // as core/units writes it, "N.m"
    std::string_view words;  // "newton metres"
    double low{};
    double high{};
    int wholeDigits{}; // most digits before the point
    int decimals{};    // most digits after it
};

[[nodiscard]] std::span<const SpokenUnit> spokenUnits();
[[nodiscard]] const SpokenUnit* findSpokenUnit(Measured what,
                                               std::string_view symbol); // null if it is not said so

// How a mechanic says a unit, for one and for many of it: "newton metre", "newton metres". A unit that no
// mechanic has a word for keeps its name by core/units, and an unknown one comes back as written.
[[nodiscard]] std::string unitWords(std::string_view symbol, bool one);

// A terminal as it may be said, with the sizes that are sold for it; a size need not be said.
struct SpokenTerminal {
    wiring::TerminalKind kind{};
    std::vector<std::string_view> sizes; // mm, "6.3"
};

[[nodiscard]] std::span<const SpokenTerminal> spokenTerminals();

// Another word for a colour that people say instead of colour::englishWord.
struct ColourWord {
    std::string_view word;
    colour::Insulation colour{};
};

[[nodiscard]] std::span<const ColourWord> otherColourWords();

// What a wire is for, as it may be said and as it is then written: "stop lamp", "horn", "earth".
[[nodiscard]] std::span<const std::string_view> spokenFunctions();

} // namespace undercowl::talk
