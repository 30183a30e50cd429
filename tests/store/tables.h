// The database of a store behind its back.
#pragma once

#include <filesystem>
#include <string>

namespace undercowl::store::test {

// Every row of every projection table, in order of their keys.
[[nodiscard]] std::string projections(const std::filesystem::path& folder);

// Runs SQL in shop.db.
void tamper(const std::filesystem::path& folder, const std::string& sql);

} // namespace undercowl::store::test
