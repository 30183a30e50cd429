// How typed words are compared and put together. ASCII letters only: other letters stand for themselves.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace undercowl::job {

[[nodiscard]] std::string lowered(std::string_view text);

// Lowered, and without the blanks around it: what two people type for the same name.
[[nodiscard]] std::string folded(std::string_view text);

// The text holds the word at the beginning of one of its own: "wheels" says "wheel", "flywheel" does not.
[[nodiscard]] bool saysWord(std::string_view text, std::string_view word);

// Lowered, and behind it the English words of the trade for those of it that are German, Italian, French or
// Spanish: what the rules look into that know English words. A word that is not known says nothing.
[[nodiscard]] std::string inTradeWords(std::string_view text);

// With commas between them.
[[nodiscard]] std::string listed(const std::vector<std::string>& words);

} // namespace undercowl::job
