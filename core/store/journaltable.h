// The table 'entry': what was said. All of it throws SQLite::Exception.
#pragma once

#include "core/journal/entry.h"
#include "core/store/database.h"

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::store {

using job::Id;

// Where a device's chain stands.
struct Head {
    std::uint64_t number{};
    std::string hash;
    journal::Clock clock;
};

inline constexpr std::string_view entryColumns = "id, device, number, wall_ms, counter, kind, stream, "
                                                 "subject, mechanic, supersedes, body, redacted, salt, "
                                                 "body_hash, previous, hash";
// The entry in a row that begins with these columns.
[[nodiscard]] journal::Entry entryFrom(SQLite::Statement& row);

void insertEntry(Database& database, const journal::Entry& entry);
[[nodiscard]] std::vector<journal::Entry> entriesOf(Database& database,
                                                    const Id& stream); // in order of effect
[[nodiscard]] std::optional<journal::Entry> entryById(Database& database, const Id& id);
[[nodiscard]] std::optional<journal::Entry> entryByNumber(Database& database, const Id& device,
                                                          std::uint64_t number);
[[nodiscard]] Head headOf(Database& database, const Id& device);
[[nodiscard]] std::size_t countEntries(Database& database);
[[nodiscard]] std::vector<Id> allStreams(Database& database);

// Device by device, in order of their numbers. Stops when 'take' answers false.
void forEachEntry(Database& database, const std::function<bool(const journal::Entry&)>& take);

// A body that arrives for an entry that came without one.
void restoreBody(Database& database, const journal::Entry& entry);
// How many bodies went.
std::size_t redactStream(Database& database, const Id& stream);
[[nodiscard]] bool redactedHere(Database& database, const Id& entry);

} // namespace undercowl::store
