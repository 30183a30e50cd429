// Part and frame numbers in the search: one writes "BH-77", another "bh 77".
#pragma once

#include "core/store/database.h"
#include "core/store/store.h"

namespace undercowl::store {

// Adds the parts and machines whose number begins with what was typed, letters and digits alone compared,
// unless they are among the hits already; never more than 'most' in all. Nothing for words that are too short
// to be a number, or hold no digit. Throws SQLite::Exception.
void addNumbers(Database& database, std::string_view typed, std::size_t most, std::vector<Hit>& hits);

} // namespace undercowl::store
