// What is spoken to the mechanic, as message keys with values that keep their meaning: a shell in another
// language translates the patterns and says colours, terminals and quantities in its own words.
#pragma once

#include "core/job/model.h"

#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace undercowl::talk {

struct Typed {
    std::string text; // in the words of whoever typed it

    friend bool operator==(const Typed&, const Typed&) = default;
};

using Value = std::variant<int, Typed, job::TypedValue, colour::WireColour, wiring::Terminal>;

struct Phrase {
    std::string_view key;      // "talk.place"; a string literal
    std::vector<Value> values; // in the order of %1, %2 ... of the translated pattern

    friend bool operator==(const Phrase&, const Phrase&) = default;
};

// Said in one breath; 'again' repeats it.
struct Sentence {
    enum class Kind : std::uint8_t {
        Gathering, // which connector comes now
        Wire,      // one place
        Line,      // one hose, vent or cable
        Step,      // one refit step
        Torque,    // what one fastening of the step is tightened to
        End,
    };
    Kind kind{};
    std::vector<Phrase> phrases;
    job::Id about; // gathering or step
    wiring::PlaceKey place{};

    friend bool operator==(const Sentence&, const Sentence&) = default;
};

// The colour alone: what 'wire only' repeats. Empty for a sentence that is not about a wire.
[[nodiscard]] Sentence wireOnly(const Sentence& sentence);

// Where the ends sit, alone. Empty where nobody wrote it down.
[[nodiscard]] Sentence endsOnly(const Sentence& sentence);

// Every key with its English pattern, from which translations are made.
struct Pattern {
    std::string_view key;
    std::string_view english;
};
[[nodiscard]] std::span<const Pattern> patterns();

// As an English voice says it: "place three, green with white tracer, blade six point three, stop lamp".
[[nodiscard]] std::string english(const Sentence& sentence);

} // namespace undercowl::talk
