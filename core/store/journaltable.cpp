#include "core/store/journaltable.h"

#include <algorithm>

namespace undercowl::store {
using journal::Entry;

Entry entryFrom(SQLite::Statement& row) {
    const auto text = [&row](int column) { return row.getColumn(column).getString(); };
    Entry entry;
    entry.id = text(0);
    entry.device = text(1);
    entry.number = static_cast<std::uint64_t>(row.getColumn(2).getInt64());
    entry.clock = {row.getColumn(3).getInt64(), static_cast<std::uint32_t>(row.getColumn(4).getInt64())};
    entry.kind = text(5);
    entry.stream = text(6);
    entry.subject = text(7);
    entry.mechanic = text(8);
    entry.supersedes = text(9);
    entry.body = text(10);
    entry.redacted = row.getColumn(11).getInt() != 0;
    entry.salt = text(12);
    entry.bodyHash = text(13);
    entry.previous = text(14);
    entry.hash = text(15);
    return entry;
}

namespace {

std::string selecting(std::string_view rest) {
    return "SELECT " + std::string(entryColumns) + " FROM entry " + std::string(rest);
}

std::optional<Entry> readOne(SQLite::Statement& statement) {
    return statement.executeStep() ? std::optional(entryFrom(statement)) : std::nullopt;
}

} // namespace

void insertEntry(Database& database, const Entry& entry) {
    Using statement(database.prepared("INSERT INTO entry (" + std::string(entryColumns) +
                                      ") VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"));
    statement->bindNoCopy(1, entry.id);
    statement->bindNoCopy(2, entry.device);
    statement->bind(3, static_cast<std::int64_t>(entry.number));
    statement->bind(4, entry.clock.wallMs);
    statement->bind(5, static_cast<std::int64_t>(entry.clock.counter));
    statement->bindNoCopy(6, entry.kind);
    statement->bindNoCopy(7, entry.stream);
    statement->bindNoCopy(8, entry.subject);
    statement->bindNoCopy(9, entry.mechanic);
    statement->bindNoCopy(10, entry.supersedes);
    statement->bindNoCopy(11, entry.body);
    statement->bind(12, entry.redacted ? 1 : 0);
    statement->bindNoCopy(13, entry.salt);
    statement->bindNoCopy(14, entry.bodyHash);
    statement->bindNoCopy(15, entry.previous);
    statement->bindNoCopy(16, entry.hash);
    statement->exec();
}

std::vector<Entry> entriesOf(Database& database, const Id& stream) {
    Using statement(database.prepared(selecting("WHERE stream = ?")));
    statement->bind(1, stream);
    std::vector<Entry> entries;
    while (statement->executeStep()) {
        entries.push_back(entryFrom(*statement));
    }
    std::sort(entries.begin(), entries.end(), journal::before);
    return entries;
}

std::optional<Entry> entryById(Database& database, const Id& id) {
    Using statement(database.prepared(selecting("WHERE id = ?")));
    statement->bind(1, id);
    return readOne(*statement);
}

std::optional<Entry> entryByNumber(Database& database, const Id& device, std::uint64_t number) {
    Using statement(database.prepared(selecting("WHERE device = ? AND number = ?")));
    statement->bind(1, device);
    statement->bind(2, static_cast<std::int64_t>(number));
    return readOne(*statement);
}

Head headOf(Database& database, const Id& device) {
    Using statement(database.prepared(selecting("WHERE device = ? ORDER BY number DESC LIMIT 1")));
    statement->bind(1, device);
    const auto last = readOne(*statement);
    return last ? Head{last->number, last->hash, last->clock} : Head{};
}

std::size_t countEntries(Database& database) {
    Using statement(database.prepared("SELECT count(*) FROM entry"));
    statement->executeStep();
    return static_cast<std::size_t>(statement->getColumn(0).getInt64());
}

std::vector<Id> allStreams(Database& database) {
    Using statement(database.prepared("SELECT DISTINCT stream FROM entry ORDER BY stream"));
    std::vector<Id> streams;
    while (statement->executeStep()) {
        streams.push_back(statement->getColumn(0).getString());
    }
    return streams;
}

void forEachEntry(Database& database, const std::function<bool(const Entry&)>& take) {
    Using statement(database.prepared(selecting("ORDER BY device, number")));
    while (statement->executeStep() && take(entryFrom(*statement))) {
    }
}

void restoreBody(Database& database, const Entry& entry) {
    Using statement(
        database.prepared("UPDATE entry SET body = ?, redacted = 0 WHERE id = ? AND redacted = 1"));
    statement->bind(1, entry.body);
    statement->bind(2, entry.id);
    statement->exec();
}

std::size_t redactStream(Database& database, const Id& stream) {
    Using statement(
        database.prepared("UPDATE entry SET body = '', redacted = 2 WHERE stream = ? AND redacted <> 2"));
    statement->bind(1, stream);
    return static_cast<std::size_t>(statement->exec());
}

bool redactedHere(Database& database, const Id& entry) {
    Using statement(database.prepared("SELECT redacted FROM entry WHERE id = ?"));
    statement->bind(1, entry);
    return statement->executeStep() && statement->getColumn(0).getInt() == 2;
}

} // namespace undercowl::store
