// The database's schema, as numbered steps forward.
#pragma once

#include <span>
#include <string_view>

namespace undercowl::store {

struct Migration {
    int to{};             // PRAGMA user_version after it; one more than before
    std::string_view sql; // run in one transaction that also writes the version
};

// From the empty database to the newest schema. What has been released here is never changed, only added to.
[[nodiscard]] std::span<const Migration> migrations();

inline constexpr int applicationId = 0x55435731; // "UCW1" in the file's header

// To be raised whenever the rows that projection.cpp writes change for the same entries: a store of another
// number is rebuilt when it is opened.
inline constexpr int projectionVersion = 6;

} // namespace undercowl::store
