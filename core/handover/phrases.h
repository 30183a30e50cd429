// The record's fixed words, by message key: the English of the command line, from which translations are
// made.
#pragma once

#include <span>
#include <string_view>

namespace undercowl::handover {

struct Phrase {
    std::string_view key;     // "record.found.title"
    std::string_view english; // %1, %2 ... stand for the message's values
};

[[nodiscard]] std::span<const Phrase> phrases();

// Empty for an unknown key.
[[nodiscard]] std::string_view englishPhrase(std::string_view key);

} // namespace undercowl::handover
