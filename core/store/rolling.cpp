// Rolling copies of the database.
#include "core/store/backup.h"

#include "core/store/backupfile.h"
#include "core/store/database.h"

#include <SQLiteCpp/Backup.h>

#include <algorithm>
#include <charconv>
#include <chrono>
#include <set>

namespace undercowl::store {
namespace {

using std::filesystem::path;

constexpr std::string_view prefix = "shop-";
constexpr std::string_view suffix = ".db";
constexpr job::TimeMs day = 86'400'000;
constexpr int busyMs = 10'000;

path folderOf(const path& shop) {
    return shop / "backups";
}

// "shop-20261126T071500.123Z.db"
std::string nameOf(job::TimeMs at) {
    return std::string(prefix) + stampOf(at) + std::string(suffix);
}

std::optional<job::TimeMs> timeOf(std::string_view name) {
    if (name.size() != nameOf(0).size() || !name.starts_with(prefix) || !name.ends_with(suffix)) {
        return std::nullopt;
    }
    const auto number = [&](std::size_t at, std::size_t digits) {
        int value = -1;
        const char* begin = name.data() + at;
        const auto read = std::from_chars(begin, begin + digits, value);
        return read.ec == std::errc{} && read.ptr == begin + digits ? value : -1;
    };
    using namespace std::chrono;
    const year_month_day date{year(number(5, 4)), month(static_cast<unsigned>(number(9, 2))),
                              std::chrono::day(static_cast<unsigned>(number(11, 2)))};
    if (!date.ok()) {
        return std::nullopt;
    }
    const auto time = sys_days(date) + hours(number(14, 2)) + minutes(number(16, 2)) +
                      seconds(number(18, 2)) + milliseconds(number(21, 3));
    const job::TimeMs at = duration_cast<milliseconds>(time.time_since_epoch()).count();
    return nameOf(at) == name ? std::optional(at) : std::nullopt;
}

// Those that may go.
std::vector<RollingBackup> superfluous(const std::vector<RollingBackup>& newestFirst) {
    std::set<job::TimeMs> days;
    std::set<job::TimeMs> weeks;
    std::vector<RollingBackup> gone;
    for (std::size_t i = 0; i < newestFirst.size(); ++i) {
        const job::TimeMs at = newestFirst[i].at;
        const bool firstOfDay = days.insert(at / day).second && days.size() <= 7;
        const bool firstOfWeek = weeks.insert(at / (7 * day)).second && weeks.size() <= 4;
        if (i >= 3 && !firstOfDay && !firstOfWeek) {
            gone.push_back(newestFirst[i]);
        }
    }
    return gone;
}

} // namespace

std::string stampOf(job::TimeMs at) {
    using namespace std::chrono;
    const sys_time<milliseconds> time{milliseconds(at)};
    const auto midnight = floor<days>(time);
    const year_month_day date{midnight};
    const hh_mm_ss clock{time - midnight};
    char text[64];
    std::snprintf(text, sizeof text, "%04d%02u%02uT%02d%02d%02d.%03dZ", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()),
                  static_cast<int>(clock.hours().count()), static_cast<int>(clock.minutes().count()),
                  static_cast<int>(clock.seconds().count()), static_cast<int>(clock.subseconds().count()));
    return text;
}

std::vector<RollingBackup> rollingBackups(const path& folder) {
    std::vector<RollingBackup> found;
    std::error_code error;
    for (std::filesystem::directory_iterator at(folderOf(folder), error), end; !error && at != end;
         at.increment(error)) {
        if (const auto time = timeOf(at->path().filename().string())) {
            std::error_code ignored;
            found.push_back({at->path(), *time, at->file_size(ignored)});
        }
    }
    std::sort(found.begin(), found.end(),
              [](const RollingBackup& a, const RollingBackup& b) { return a.at > b.at; });
    return found;
}

bool backupIsDue(const path& folder, job::TimeMs now) {
    const auto all = rollingBackups(folder);
    return all.empty() || now - all.front().at > day || all.front().at > now + day; // a clock set back
}

Result<void> checkDatabase(const path& file, const std::string& vfs) {
    return guarded([&]() -> Result<void> {
        SQLite::Database copy(file.string(), SQLite::OPEN_READONLY, 0, vfs);
        const std::string said = copy.execAndGet("PRAGMA quick_check").getString();
        return said == "ok"
                   ? Result<void>{}
                   : failed(Fault::Damaged, "backup: the copy of the database is not sound: " + said +
                                                ". Run 'undercowlctl store check'.");
    });
}

Result<void> copyDatabase(const Store& store, const path& file, Copy copy) {
    if (const auto why = store.readOnly(); !why.empty()) {
        return failed(Fault::CannotOpen, "backup: " + why);
    }
    const auto made = guarded([&]() -> Result<void> {
        const std::string vfs = store.files()->vfs();
        SQLite::Database from((store.folder() / "shop.db").string(), SQLite::OPEN_READONLY, busyMs, vfs);
        // One view for the whole copy: else every entry said meanwhile would begin it anew.
        const SQLite::Transaction view(from);
        (void)from.execAndGet("SELECT count(*) FROM sqlite_master");
        SQLite::Database to(file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE, busyMs, vfs);
        to.exec("PRAGMA journal_mode = OFF"); // a copy that fails is thrown away
        to.exec(copy == Copy::Passing ? "PRAGMA synchronous = OFF" : "PRAGMA synchronous = FULL");
        {
            SQLite::Backup backup(to, from);
            backup.executeStep(-1);
        }
        to.exec("PRAGMA journal_mode = DELETE"); // one file, without a log beside it
        return {};
    });
    const auto sound = made && copy == Copy::Lasting ? checkDatabase(file, store.files()->vfs()) : made;
    if (!sound) {
        for (const char* more : {"", "-journal", "-wal", "-shm"}) {
            (void)store.files()->remove(file.string() + more);
        }
    }
    return sound;
}

Result<RollingBackup> backUpDatabase(const Store& store) {
    const auto files = store.files();
    const path folder = folderOf(store.folder());
    if (auto made = files->makeFolder(folder); !made) {
        return tl::unexpected(made.error());
    }
    if (const auto names = files->list(folder)) {
        for (const std::string& name : *names) {
            if (name.starts_with(".incoming-")) { // of one that was cut off
                (void)files->remove(folder / name);
            }
        }
    }
    RollingBackup backup{folder / nameOf(store.now()), store.now(), 0};
    const path beside = folder / (".incoming-" + store.newId());
    if (auto copied = copyDatabase(store, beside, Copy::Lasting); !copied) {
        return tl::unexpected(copied.error());
    }
    Result<void> done = files->rename(beside, backup.file);
    if (done) {
        done = files->syncFolder(folder);
    }
    if (!done) {
        (void)files->remove(beside);
        return tl::unexpected(done.error());
    }
    std::error_code ignored;
    backup.bytes = std::filesystem::file_size(backup.file, ignored);
    for (const RollingBackup& old : superfluous(rollingBackups(store.folder()))) {
        (void)files->remove(old.file); // one too many does no harm
    }
    return backup;
}

} // namespace undercowl::store
