#include "core/store/database.h"

#include <SQLiteCpp/Backup.h>
#include <sqlite3.h>

namespace undercowl::store {
namespace {

constexpr int busyMs = 10'000; // another process that writes is waited for this long

Fault faultOf(int code) {
    switch (code & 0xFF) {
    case SQLITE_FULL: return Fault::DiskFull;
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB: return Fault::Damaged;
    case SQLITE_CANTOPEN:
    case SQLITE_PERM:
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
    case SQLITE_READONLY:
    case SQLITE_AUTH: return Fault::CannotOpen;
    case SQLITE_CONSTRAINT:
    case SQLITE_TOOBIG: return Fault::Refused;
    default: return Fault::InputOutput;
    }
}

std::string remedy(Fault fault) {
    switch (fault) {
    case Fault::DiskFull: return "Make room on the disk, then try again; nothing of this was kept.";
    case Fault::Damaged:
        return "Nothing was changed. Bring what can be read into a new place with 'undercowlctl store "
               "salvage --to "
               "NEWFOLDER', and name a backup with --from if there is one.";
    case Fault::CannotOpen:
        return "Check that the folder may be written and that no other program holds it locked.";
    default: return "Try again; if it comes back, check the disk.";
    }
}

int pragma(SQLite::Database& database, const char* name) {
    return database.execAndGet(std::string("PRAGMA ") + name).getInt();
}

// Looks without changing anything, not even the journal mode.
Result<int> look(const std::filesystem::path& file, int newest, const std::string& vfs, int way) {
    SQLite::Database database(file.string(), way, busyMs, vfs);
    const int version = pragma(database, "user_version");
    const int application = pragma(database, "application_id");
    const int tables = database.execAndGet("SELECT count(*) FROM sqlite_master").getInt();
    if (application != applicationId && (tables != 0 || version != 0)) {
        return failed(Fault::CannotOpen,
                      file.string() + " is the database of another program. It was left as it is; name "
                                      "another folder.");
    }
    if (version > newest) {
        return failed(Fault::TooNew, file.string() + " was written by a newer version (schema " +
                                         std::to_string(version) + ", known here: up to " +
                                         std::to_string(newest) +
                                         "). It was left as it is; update this program.");
    }
    return version;
}

Result<int> schemaOf(const std::filesystem::path& file, int newest, const std::string& vfs) {
    try {
        return look(file, newest, vfs, SQLite::OPEN_READONLY);
    } catch (const SQLite::Exception& error) {
        if (error.getErrorCode() != SQLITE_READONLY) {
            throw;
        }
        // A cut while the database was being made left a journal that has to be rolled back first.
        return look(file, newest, vfs, SQLite::OPEN_READWRITE);
    }
}

void copyBeside(SQLite::Database& database, const std::filesystem::path& file, int version,
                const std::string& vfs) {
    SQLite::Database copy(file.string() + ".schema-" + std::to_string(version),
                          SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE, busyMs, vfs);
    SQLite::Backup backup(copy, database);
    backup.executeStep(-1);
}

void migrate(SQLite::Database& database, const std::filesystem::path& file, std::span<const Migration> steps,
             const std::string& vfs) {
    const int found = pragma(database, "user_version");
    if (!steps.empty() && found > 0 && found < steps.back().to) {
        copyBeside(database, file, found, vfs);
    }
    for (const Migration& step : steps) {
        if (step.to <= found) {
            continue;
        }
        SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
        if (pragma(database, "user_version") >= step.to) {
            continue; // another process did it while we waited
        }
        database.exec(std::string(step.sql));
        database.exec("PRAGMA application_id = " + std::to_string(applicationId));
        database.exec("PRAGMA user_version = " + std::to_string(step.to));
        transaction.commit();
    }
}

} // namespace

Problem problemOf(const SQLite::Exception& error) {
    // SQLite keeps this code for the index of its log alone, which is made when a store is opened; a full
    // disk is what it comes from.
    const bool noIndex = error.getExtendedErrorCode() == SQLITE_IOERR_SHMSIZE;
    const Fault fault = noIndex ? Fault::DiskFull : faultOf(error.getErrorCode());
    return {fault,
            std::string("database: ") + (noIndex ? "the disk is full" : error.what()) + ". " + remedy(fault)};
}

Result<Database> Database::open(const std::filesystem::path& file, std::span<const Migration> steps,
                                const std::string& vfs) {
    return guarded([&]() -> Result<Database> {
        std::error_code error;
        if (std::filesystem::exists(file, error)) {
            const auto version = schemaOf(file, steps.empty() ? 0 : steps.back().to, vfs);
            if (!version) {
                return tl::unexpected(version.error());
            }
        }
        auto raw = std::make_unique<SQLite::Database>(
            file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE, busyMs, vfs);
        raw->exec("PRAGMA cell_size_check = ON");
        // The first write of all goes through a journal. Unless its removal is synced too, a cut may bring it
        // back, and with it the empty database.
        raw->exec("PRAGMA synchronous = EXTRA");
        raw->exec("PRAGMA journal_mode = WAL");
        raw->exec("PRAGMA synchronous = FULL");
        raw->exec("PRAGMA foreign_keys = ON");
        raw->exec("PRAGMA secure_delete = ON"); // what is redacted is overwritten, not only unlinked
        migrate(*raw, file, steps, vfs);
        return Database(std::move(raw));
    });
}

SQLite::Statement& Database::prepared(std::string_view sql) {
    auto& statement = statements_[std::string(sql)];
    if (!statement) {
        statement = std::make_unique<SQLite::Statement>(*raw_, std::string(sql));
    }
    statement->reset();
    statement->clearBindings();
    return *statement;
}

} // namespace undercowl::store
