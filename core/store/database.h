// The SQLite file: opening, schema, prepared statements, and its errors as problems.
#pragma once

#include "core/store/result.h"
#include "core/store/schema.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <exception>
#include <filesystem>
#include <memory>
#include <string>
#include <string_view>
#include <unordered_map>

namespace undercowl::store {

[[nodiscard]] Problem problemOf(const SQLite::Exception& error);

// Runs what may throw SQLite's errors and answers them as a problem.
template<typename Work>
auto guarded(const Work& work) -> decltype(work()) {
    try {
        return work();
    } catch (const SQLite::Exception& error) {
        return tl::unexpected<Problem>(problemOf(error));
    } catch (const std::exception& error) {
        return failed(Fault::InputOutput, error.what());
    }
}

class Database {
public:
    // Opens or creates, then migrates. A file of a newer schema, of another program or a damaged one is left
    // as it is. Before an older schema is migrated, the database is copied beside it: "shop.db.schema-1".
    // 'vfs' is that of Files::vfs().
    [[nodiscard]] static Result<Database> open(const std::filesystem::path& file,
                                               std::span<const Migration> steps = migrations(),
                                               const std::string& vfs = {});

    Database(Database&&) = default;
    Database& operator=(Database&&) = delete; // would close a file whose statements still stand
    ~Database() = default;

    // The statement, ready to be bound: prepared once and kept. Throws SQLite::Exception, as does everything
    // done with it.
    [[nodiscard]] SQLite::Statement& prepared(std::string_view sql);
    void run(std::string_view sql) { raw_->exec(std::string(sql)); }
    [[nodiscard]] SQLite::Database& raw() { return *raw_; }

private:
    explicit Database(std::unique_ptr<SQLite::Database> raw) : raw_(std::move(raw)) {}

    std::unique_ptr<SQLite::Database> raw_;
    std::unordered_map<std::string, std::unique_ptr<SQLite::Statement>> statements_;
};

// Steps the statement to its end and resets it, also when it throws: a statement left standing would keep its
// transaction open.
class Using {
public:
    explicit Using(SQLite::Statement& statement) : statement_(statement) {}
    Using(const Using&) = delete;
    Using& operator=(const Using&) = delete;
    ~Using() { statement_.tryReset(); }
    SQLite::Statement* operator->() { return &statement_; }
    SQLite::Statement& operator*() { return statement_; }

private:
    SQLite::Statement& statement_;
};

} // namespace undercowl::store
