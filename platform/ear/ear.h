// From sound to what was meant, or to 'say it again'.
//
// A wrong answer is worse than none: speech that is not in the grammar, and speech that two ways of listening
// do not agree on, is rejected. Nothing here knows a microphone; whoever records hands the samples over.
#pragma once

#include "core/talk/intent.h"
#include "platform/ear/sound.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <tl/expected.hpp>

namespace undercowl::platform {

// Why nothing was taken. English for the command line; the kind is for a shell that speaks another language.
enum class NotHeard : std::uint8_t {
    Silence,     // no speech in it
    Unsure,      // it may have been something else
    Unknown,     // not a sentence of the grammar
    Implausible, // a number that the reading cannot have
};

struct Heard {
    std::string text;                   // the words that fit best; empty when there are none
    std::optional<talk::Intent> intent; // only when accepted
    NotHeard why{};                     // only when not
    std::string message;                // English: why not, and what to do

    [[nodiscard]] bool accepted() const { return intent.has_value(); }
};

// One sentence at a time. Not for several threads at once; hearing takes a fraction of the sentence's length.
class Ear {
public:
    Ear() = default;
    Ear(const Ear&) = delete;
    Ear& operator=(const Ear&) = delete;
    virtual ~Ear() = default;

    // Whole sentence, from before its first word to after its last, at earRate.
    [[nodiscard]] virtual Heard hear(std::span<const float> samples) = 0;

    // Whether it is talk::wakePhrase() and nothing else. By itself it does nothing: a false one only opens
    // the ear for what hear() then takes or rejects.
    [[nodiscard]] virtual bool called(std::span<const float> samples) = 0;
};

// The ear of this system, for English and the grammar of core/talk. The error says what is missing.
[[nodiscard]] tl::expected<std::unique_ptr<Ear>, std::string> openEar();

} // namespace undercowl::platform
