#include "core/store/readable.h"

#include "core/store/journaltable.h"

#include <algorithm>
#include <set>

namespace undercowl::store {
namespace {

using journal::Entry;

// The entry, and then its row.
const std::string columns = std::string(entryColumns) + ", rowid";
constexpr int rowColumn = 16;

class Reading {
public:
    explicit Reading(SQLite::Database& database) : database_(database) {}

    Readable run() {
        made_.schema = database_.execAndGet("PRAGMA user_version").getInt();
        // Rows by a walk from the front, and from the back when the walk met a damaged page.
        if (!walk("ASC")) {
            const std::int64_t front = last_;
            (void)walk("DESC");
            between(front, last_);
            tellUnread();
        }
        made_.settings = table("setting", "name", "value");
        made_.device = table("device_state", "name", "value");
        made_.drafts = table("draft", "form", "json");
        std::sort(made_.entries.begin(), made_.entries.end(), [](const Entry& a, const Entry& b) {
            return std::tie(a.device, a.number) < std::tie(b.device, b.number);
        });
        return std::move(made_);
    }

private:
    void take(SQLite::Statement& row) {
        last_ = row.getColumn(rowColumn).getInt64();
        if (!rows_.insert(last_).second) {
            return;
        }
        Entry entry = entryFrom(row);
        if (const auto problem = journal::sealProblem(entry)) {
            made_.faults.push_back(*problem + " (" + entry.kind + " of " + entry.stream + ")");
        } else if (ids_.insert(entry.id).second) {
            made_.entries.push_back(std::move(entry));
        }
    }

    bool walk(const char* direction) {
        try {
            SQLite::Statement row(database_, "SELECT " + columns + " FROM entry ORDER BY rowid " + direction);
            while (row.executeStep()) {
                if (rows_.contains(row.getColumn(rowColumn).getInt64())) {
                    return true; // met what the walk from the front has seen
                }
                take(row);
            }
            return true;
        } catch (const SQLite::Exception&) {
            return false;
        }
    }

    void between(std::int64_t front, std::int64_t back) {
        for (std::int64_t row = front + 1; row < back; ++row) {
            try {
                SQLite::Statement one(database_, "SELECT " + columns + " FROM entry WHERE rowid = ?");
                one.bind(1, row);
                if (one.executeStep()) {
                    take(one);
                }
            } catch (const SQLite::Exception&) { // told by tellUnread()
            }
        }
    }

    // The index by stream lies on pages of its own, and knows which rows there should be.
    void tellUnread() {
        std::map<std::string, std::size_t> lost;
        try {
            SQLite::Statement row(database_, "SELECT rowid, stream FROM entry INDEXED BY entry_by_stream");
            while (row.executeStep()) {
                if (!rows_.contains(row.getColumn(0).getInt64())) {
                    ++lost[row.getColumn(1).getString()];
                }
            }
        } catch (const SQLite::Exception&) {
            made_.faults.emplace_back(
                "which entries cannot be read is not known: the index of the journal is "
                "damaged too");
        }
        for (const auto& [stream, count] : lost) {
            made_.faults.push_back(std::to_string(count) + " entries of " + nameOf(stream) +
                                   " cannot be read: their place in the database is damaged");
        }
    }

    std::string nameOf(const std::string& stream) {
        try {
            SQLite::Statement row(database_, "SELECT number FROM job_line WHERE stream = ?");
            row.bind(1, stream);
            if (row.executeStep() && !row.getColumn(0).getString().empty()) {
                return "job " + row.getColumn(0).getString();
            }
        } catch (const SQLite::Exception&) { // then by its id
        }
        return stream;
    }

    std::map<std::string, std::string> table(const std::string& name, const char* key, const char* value) {
        std::map<std::string, std::string> all;
        try {
            SQLite::Statement row(database_, "SELECT " + std::string(key) + ", " + value + " FROM " + name);
            while (row.executeStep()) {
                all[row.getColumn(0).getString()] = row.getColumn(1).getString();
            }
        } catch (const SQLite::Exception& error) {
            made_.faults.push_back("table " + name + ": cannot be read to its end: " + error.what());
        }
        return all;
    }

    SQLite::Database& database_;
    Readable made_;
    std::set<std::int64_t> rows_;
    std::set<std::string> ids_;
    std::int64_t last_{};
};

} // namespace

Result<Readable> readWhatCanBe(const std::filesystem::path& database) {
    std::error_code error;
    if (!std::filesystem::is_regular_file(database, error)) {
        return failed(Fault::NotFound, "there is no database " + database.string());
    }
    return guarded([&]() -> Result<Readable> {
        SQLite::Database raw(database.string(), SQLite::OPEN_READONLY, 2'000);
        raw.exec("PRAGMA cell_size_check = ON");
        (void)raw.execAndGet("SELECT count(*) FROM sqlite_master WHERE name = 'entry'");
        SQLite::Statement has(raw, "SELECT " + columns + " FROM entry LIMIT 0"); // or throws
        return Reading(raw).run();
    });
}

} // namespace undercowl::store
