#include "tests/store/tables.h"

#include "core/store/rows.h"

namespace undercowl::store::test {

std::string projections(const std::filesystem::path& folder) {
    SQLite::Database database((folder / "shop.db").string(), SQLite::OPEN_READONLY, 10'000);
    std::string all;
    for (const Table& table : tables()) {
        std::string columns;
        for (const auto column : table.columns) {
            columns += (columns.empty() ? "" : ", ") + std::string(column);
        }
        SQLite::Statement row(database, "SELECT " + columns + " FROM " + std::string(table.name) +
                                            " ORDER BY " + columns);
        while (row.executeStep()) {
            all += std::string(table.name);
            for (int i = 0; i < row.getColumnCount(); ++i) {
                all += "|" + row.getColumn(i).getString();
            }
            all += "\n";
        }
    }
    return all;
}

void tamper(const std::filesystem::path& folder, const std::string& sql) {
    SQLite::Database database((folder / "shop.db").string(), SQLite::OPEN_READWRITE, 10'000);
    database.exec(sql);
}

} // namespace undercowl::store::test
