// Rows of the projection tables as values, so that the same code writes them, rebuilds them and compares
// them.
#pragma once

#include "core/store/database.h"

#include <cstdint>
#include <map>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace undercowl::store {

using Cell = std::variant<std::monostate, std::int64_t, double, std::string>;
using Row = std::vector<Cell>;

struct Table {
    std::string_view name;
    std::vector<std::string_view> columns; // the key first; the first of all is the stream
    std::size_t keys{};
};

enum class TableId : std::uint8_t {
    Mechanic,
    Machine,
    Owner,
    JobLine,
    Photo,
    Finding,
    Task,
    Step,
    Hardware,
    Gathering,
    PlaceAnswer,
    PlaceTag,
    WireCheck,
    Part,
    Reading,
    Memo,
    Recheck,
    SearchLine,
};

[[nodiscard]] std::span<const Table> tables(); // indexed by TableId
[[nodiscard]] const Table& table(TableId id);

// Where changed rows go.
class RowSink {
public:
    RowSink() = default;
    RowSink(const RowSink&) = delete;
    RowSink& operator=(const RowSink&) = delete;
    virtual ~RowSink() = default;

    virtual void put(TableId table, Row row) = 0;
    // Drops every row whose key begins with these cells.
    virtual void drop(TableId table, const Row& key) = 0;
};

// Into the database's tables. Throws SQLite::Exception.
class TableSink final : public RowSink {
public:
    explicit TableSink(Database& database) : database_(database) {}
    void put(TableId table, Row row) override;
    void drop(TableId table, const Row& key) override;

private:
    Database& database_;
};

// Into memory.
using RowsByKey = std::map<Row, Row>; // key to whole row
class MemorySink final : public RowSink {
public:
    void put(TableId table, Row row) override;
    void drop(TableId table, const Row& key) override;
    [[nodiscard]] const std::vector<RowsByKey>& rows() const { return rows_; }

private:
    std::vector<RowsByKey> rows_{tables().size()};
};

// The rows that a table holds of a stream. Throws SQLite::Exception.
[[nodiscard]] RowsByKey readRows(Database& database, TableId table, const std::string& stream);

void bindCell(SQLite::Statement& statement, int index, const Cell& cell);

} // namespace undercowl::store
