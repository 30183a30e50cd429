// What the store takes, whoever gives it: a screen, a script or an archive from elsewhere.
#pragma once

#include "core/journal/entry.h"

#include <optional>
#include <string>
#include <string_view>

namespace undercowl::store {

inline constexpr std::size_t longestBody = std::size_t{256} << 10U; // bytes of JSON in one entry
inline constexpr std::size_t deepestJson = 32;
inline constexpr std::size_t longestName = 200;                    // bytes, of a setting or draft
inline constexpr std::size_t longestDraft = std::size_t{1} << 20U; // bytes
inline constexpr job::TimeMs latestTime = 253'402'300'799'999;     // the end of the year 9999

// 1 to 64 of the characters 0-9, a-z and '-': UUIDs, and "shop".
[[nodiscard]] bool isId(std::string_view text);

// Whether the text is one JSON value: UTF-8, no NUL in any string, not deeper than given, an object at the
// top. Answers what is wrong with it.
[[nodiscard]] std::optional<std::string> jsonProblem(std::string_view text, std::size_t deepest);

// Why the draft cannot become an entry, naming the field; nothing when it can. Looks at the draft alone.
[[nodiscard]] std::optional<std::string> draftProblem(const journal::Draft& draft);

// Why an entry from elsewhere cannot be taken; nothing when it can. Its kind may be unknown here: it is kept
// for the version that knows it.
[[nodiscard]] std::optional<std::string> entryProblem(const journal::Entry& entry);

} // namespace undercowl::store
