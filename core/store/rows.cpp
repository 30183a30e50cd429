#include "core/store/rows.h"

#include <algorithm>
#include <array>

namespace undercowl::store {
namespace {

std::string joined(std::span<const std::string_view> names, std::string_view before, std::string_view after,
                   std::string_view between) {
    std::string text;
    for (const std::string_view name : names) {
        text += text.empty() ? "" : between;
        text += before;
        text += name;
        text += after;
    }
    return text;
}

// Names of tables and columns come from the list below alone, never from outside.
std::string putSql(const Table& table) {
    const std::span<const std::string_view> all(table.columns);
    std::string sql =
        "INSERT INTO " + std::string(table.name) + " (" + joined(all, "", "", ", ") + ") VALUES (";
    for (std::size_t i = 0; i < all.size(); ++i) {
        sql += i == 0 ? "?" : ", ?";
    }
    sql += ") ON CONFLICT (" + joined(all.first(table.keys), "", "", ", ") + ") DO UPDATE SET ";
    for (std::size_t i = table.keys; i < all.size(); ++i) {
        sql += i == table.keys ? "" : ", ";
        sql += std::string(all[i]) + " = excluded." + std::string(all[i]);
    }
    return sql;
}

std::string dropSql(const Table& table, std::size_t cells) {
    const std::span<const std::string_view> all(table.columns);
    return "DELETE FROM " + std::string(table.name) + " WHERE " +
           joined(all.first(cells), "", " = ?", " AND ");
}

// Made once: an entry writes several rows.
const std::string& kept(std::vector<std::string>& cache, std::size_t index, const auto& make) {
    if (cache.size() <= index) {
        cache.resize(index + 1);
    }
    if (cache[index].empty()) {
        cache[index] = make();
    }
    return cache[index];
}

Cell cellOf(const SQLite::Column& column) {
    if (column.isNull()) {
        return std::monostate{};
    }
    if (column.isInteger()) {
        return column.getInt64();
    }
    if (column.isFloat()) {
        return column.getDouble();
    }
    return column.getString();
}

} // namespace

std::span<const Table> tables() {
    static const std::vector<Table> all{
        {"mechanic", {"stream", "id", "name"}, 2},
        {"machine", {"stream", "make", "model", "year", "frame_number", "notes"}, 1},
        {"owner", {"stream", "name", "phone", "mail", "address"}, 1},
        {"job_line",
         {"stream", "number", "machine", "machine_label", "frame_number", "owner", "owner_name", "reason",
          "moment", "stopped_key", "stopped_values", "next_key", "next_values", "waiting", "open_unsafe",
          "last_at", "waits", "waits_key", "waits_values"},
         1},
        {"photo",
         {"stream", "id", "media", "purpose", "about", "note", "width", "height", "taken_at", "entry",
          "mechanic", "at"},
         2},
        {"finding",
         {"stream", "id", "text", "severity", "to_do", "settled", "settled_how", "entry", "mechanic", "at"},
         2},
        {"task", {"stream", "id", "title", "waiting", "waiting_for", "place"}, 2},
        {"step",
         {"stream", "id", "task", "title", "bag", "note", "cautions", "place", "entry", "mechanic", "at",
          "refitted_entry", "refitted_mechanic", "refitted_at", "refitted_note"},
         2},
        {"hardware",
         {"stream", "step", "place", "count", "what", "thread", "length", "torque_digits", "torque_unit"},
         3},
        {"gathering",
         {"stream", "id", "title", "kind", "places", "rows", "seen_from", "latch", "first_photo", "first_x",
          "first_y", "photo", "step"},
         2},
        {"place_answer",
         {"stream", "gathering", "half", "number", "slot", "answer", "base", "tracer", "terminal", "size_mm2",
          "function", "din", "how", "probability", "source", "mark_photo", "mark_x", "mark_y", "entry"},
         6},
        {"place_tag", {"stream", "gathering", "half", "number", "slot", "tag"}, 5},
        {"wire_check",
         {"stream", "gathering", "half", "number", "slot", "outcome", "against", "note", "entry", "mechanic",
          "at"},
         5},
        {"part", {"stream", "id", "name", "number", "state", "note", "about", "entry", "mechanic", "at"}, 2},
        {"reading",
         {"stream", "id", "about", "what", "value_digits", "value_unit", "instrument", "uncertainty",
          "low_digits", "low_unit", "high_digits", "high_unit", "limit_source", "verdict", "probability",
          "entry", "mechanic", "at", "repeated"},
         2},
        {"memo", {"stream", "id", "media", "text", "about", "entry", "mechanic", "at"}, 2},
        {"recheck",
         {"stream", "id", "what", "after_digits", "after_unit", "after_days", "entry", "mechanic", "at"},
         2},
        {"search_line", {"stream", "kind", "subject", "detail", "title", "body", "machine"}, 4},
    };
    return all;
}

const Table& table(TableId id) {
    return tables()[static_cast<std::size_t>(id)];
}

void bindCell(SQLite::Statement& statement, int index, const Cell& cell) {
    if (const auto* whole = std::get_if<std::int64_t>(&cell)) {
        statement.bind(index, *whole);
    } else if (const auto* real = std::get_if<double>(&cell)) {
        statement.bind(index, *real);
    } else if (const auto* text = std::get_if<std::string>(&cell)) {
        statement.bindNoCopy(index, *text);
    } else {
        statement.bind(index);
    }
}

void TableSink::put(TableId id, Row row) {
    static thread_local std::vector<std::string> cache;
    const auto& sql = kept(cache, static_cast<std::size_t>(id), [id] { return putSql(table(id)); });
    Using statement(database_.prepared(sql));
    for (std::size_t i = 0; i < row.size(); ++i) {
        bindCell(*statement, static_cast<int>(i) + 1, row[i]);
    }
    statement->exec();
}

void TableSink::drop(TableId id, const Row& key) {
    Using statement(database_.prepared(dropSql(table(id), key.size())));
    for (std::size_t i = 0; i < key.size(); ++i) {
        bindCell(*statement, static_cast<int>(i) + 1, key[i]);
    }
    statement->exec();
}

void MemorySink::put(TableId id, Row row) {
    Row key(row.begin(), row.begin() + static_cast<std::ptrdiff_t>(table(id).keys));
    rows_.at(static_cast<std::size_t>(id)).insert_or_assign(std::move(key), std::move(row));
}

void MemorySink::drop(TableId id, const Row& key) {
    std::erase_if(rows_.at(static_cast<std::size_t>(id)), [&key](const auto& entry) {
        return std::equal(key.begin(), key.end(), entry.first.begin());
    });
}

RowsByKey readRows(Database& database, TableId id, const std::string& stream) {
    const Table& from = table(id);
    Using statement(database.prepared("SELECT " + joined(from.columns, "", "", ", ") + " FROM " +
                                      std::string(from.name) + " WHERE stream = ?"));
    statement->bind(1, stream);
    RowsByKey rows;
    while (statement->executeStep()) {
        Row row;
        for (int i = 0; i < static_cast<int>(from.columns.size()); ++i) {
            row.push_back(cellOf(statement->getColumn(i)));
        }
        Row key(row.begin(), row.begin() + static_cast<std::ptrdiff_t>(from.keys));
        rows.emplace(std::move(key), std::move(row));
    }
    return rows;
}

} // namespace undercowl::store
