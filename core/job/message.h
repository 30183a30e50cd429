// What the core has to say, as a key with values: whoever shows it translates it.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace undercowl::job {

struct Message {
    std::string_view key;            // "standing.stripped"; a string literal
    std::vector<std::string> values; // in the order of %1, %2 ... of the translated text

    friend bool operator==(const Message&, const Message&) = default;
};

// The pattern with its %1, %2 ... replaced by the values; one that has no value is left out.
[[nodiscard]] std::string filled(std::string_view pattern, const std::vector<std::string>& values);

// The English text, for the command line and where a translation is missing.
[[nodiscard]] std::string english(const Message& message);

// The English pattern behind a key ("stopped after: %1"), from which translations are made; empty for an
// unknown key.
[[nodiscard]] std::string_view englishPattern(std::string_view key);

// All of them.
[[nodiscard]] std::vector<std::string_view> englishPatterns();

// The key itself, for as long as the program runs; empty for an unknown one. For messages read from a file.
[[nodiscard]] std::string_view knownKey(std::string_view key);

} // namespace undercowl::job
