// The journal's rows as they lie on the pages of a database file, for when SQLite finds no way to them.
#pragma once

#include "core/journal/entry.h"

#include <cstdint>
#include <filesystem>
#include <vector>

namespace undercowl::store {

struct RowOnPage {
    std::int64_t row{}; // its rowid
    journal::Entry entry;
};

// Looks at every page of the file and of the log beside it for rows of the table 'entry', whatever has become
// of the file's header, of its schema and of the trees that lead to the pages (SQLite, "Database File
// Format", sections 1.5, 1.6, 2.1 and 4). What is read counts only when its seal fits, so that nothing false
// comes of a page that is something else; each id once, as it was last written. Never writes. A file that is
// not there or cannot be read has no rows.
[[nodiscard]] std::vector<RowOnPage> entriesOnPages(const std::filesystem::path& database);

} // namespace undercowl::store
