#include "core/store/readable.h"

#include "core/store/journaltable.h"
#include "core/store/pages.h"

#include <algorithm>
#include <cctype>
#include <set>

namespace undercowl::store {
namespace {

using journal::Entry;

// The entry, and then its row.
const std::string columns = std::string(entryColumns) + ", rowid";
constexpr int rowColumn = 16;

void sortByNumber(std::vector<Entry>& entries) {
    std::sort(entries.begin(), entries.end(), [](const Entry& a, const Entry& b) {
        return std::tie(a.device, a.number) < std::tie(b.device, b.number);
    });
}

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
            onPages();
            tellUnread();
        } else if (!isAll()) { // a tree that leads past some of its pages
            onPages();
            tellUnread();
        }
        made_.settings = table("setting", "name", "value");
        made_.device = table("device_state", "name", "value");
        made_.drafts = table("draft", "form", "json");
        sortByNumber(made_.entries);
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

    // Whether the walk met as many rows as the index by stream has.
    bool isAll() {
        try {
            SQLite::Statement count(database_, "SELECT count(*) FROM entry INDEXED BY entry_by_stream WHERE "
                                               "stream >= ''");
            return count.executeStep() &&
                   count.getColumn(0).getInt64() == static_cast<std::int64_t>(rows_.size());
        } catch (const SQLite::Exception&) {
            return false;
        }
    }

    // Rows whose pages are whole, though no way leads to them.
    void onPages() {
        for (RowOnPage& found : entriesOnPages(database_.getFilename())) {
            rows_.insert(found.row);
            if (ids_.insert(found.entry.id).second) {
                made_.entries.push_back(std::move(found.entry));
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

namespace {

// A name as SQLite takes it, of a file that nobody writes: without a log and an index of it beside, which
// cannot be made on a full disk.
std::string asUnchanging(const std::filesystem::path& file) {
    constexpr std::string_view hex = "0123456789ABCDEF";
    std::string name = "file:";
    for (const char c : std::filesystem::absolute(file).string()) {
        const auto byte = static_cast<unsigned char>(c);
        if (std::isalnum(byte) != 0 || c == '/' || c == '.' || c == '-' || c == '_') {
            name += c;
        } else {
            name.append("%").append(1, hex[byte >> 4U]).append(1, hex[byte & 15U]);
        }
    }
    return name + "?immutable=1";
}

// Nothing is in the log that the database has not. Where that cannot be told there may be.
bool hasNoLog(std::filesystem::path database) {
    using std::filesystem::file_type;
    std::error_code error;
    const auto log = database += "-wal";
    const file_type kind = std::filesystem::status(log, error).type();
    return kind == file_type::not_found || kind == file_type::directory ||
           (kind == file_type::regular && std::filesystem::file_size(log, error) == 0);
}

Result<Readable> readFrom(const std::string& name, int way) {
    return guarded([&]() -> Result<Readable> {
        SQLite::Database raw(name, way, 2'000);
        raw.exec("PRAGMA cell_size_check = ON");
        (void)raw.execAndGet("SELECT count(*) FROM sqlite_master WHERE name = 'entry'");
        SQLite::Statement has(raw, "SELECT " + columns + " FROM entry LIMIT 0"); // or throws
        return Reading(raw).run();
    });
}

} // namespace

Result<Readable> readWhatCanBe(const std::filesystem::path& database) {
    std::error_code error;
    if (!std::filesystem::is_regular_file(database, error)) {
        return failed(Fault::NotFound, "there is no database " + database.string());
    }
    auto read = readFrom(database.string(), SQLite::OPEN_READONLY);
    const bool noPlaceForLog =
        !read && (read.error().fault == Fault::CannotOpen || read.error().fault == Fault::DiskFull);
    if (noPlaceForLog && hasNoLog(database)) {
        if (auto still = readFrom(asUnchanging(database), SQLite::OPEN_READONLY | SQLite::OPEN_URI)) {
            return still;
        }
    }
    // A file that may not be read now is no damaged one.
    if (read || read.error().fault == Fault::CannotOpen) {
        return read;
    }
    Readable made;
    for (RowOnPage& found : entriesOnPages(database)) {
        made.entries.push_back(std::move(found.entry));
    }
    if (made.entries.empty()) {
        return failed(Fault::Damaged,
                      "no entry can be read of " + database.string() + ": " + read.error().message);
    }
    sortByNumber(made.entries);
    made.faults.push_back("the database cannot be opened; " + std::to_string(made.entries.size()) +
                          " entries were found on its pages, and what else was on them is not known. " +
                          read.error().message);
    return made;
}

} // namespace undercowl::store
