// How entries of one device follow each other.
#pragma once

#include "core/journal/entry.h"

#include <optional>
#include <span>
#include <string>

namespace undercowl::store {

// Why 'after' cannot be the entry next to 'before' in their device's chain; nothing when it can.
[[nodiscard]] std::optional<std::string> linkProblem(const journal::Entry& before,
                                                     const journal::Entry& after);

// The same for every pair of neighbours among these entries, which may be of several devices and in any
// order; also two different entries of one number.
[[nodiscard]] std::optional<std::string> chainProblem(std::span<const journal::Entry> entries);

} // namespace undercowl::store
