// Whole-shop backups put into a new place, or used to mend the old one.
#include "core/store/backupfile.h"
#include "core/store/database.h"
#include "core/store/media.h"
#include "core/store/salvage.h"
#include "core/store/unpacking.h"

#include "core/journal/fold.h"

#include <algorithm>
#include <map>

namespace undercowl::store {
namespace {

using std::filesystem::path;

Result<void> mayRestoreTo(const path& folder) {
    std::error_code error;
    if (std::filesystem::exists(std::filesystem::symlink_status(folder, error)) &&
        (!std::filesystem::is_directory(folder, error) || !std::filesystem::is_empty(folder, error))) {
        return failed(Fault::Refused, "restore: there is something in " + folder.string() +
                                          " already; nothing is restored over it. Name a new folder.");
    }
    return {};
}

// A file of the restored store that is written as it comes.
class Writer {
public:
    Writer(path file, std::shared_ptr<Files> files) : sink_(std::move(file), std::move(files)) {}
    Result<void> put(std::span<const std::byte> piece) { return sink_.put(piece); }
    Result<void> end() { return sink_.end(); }

private:
    FileSink sink_;
};

// The store gets a device id of its own when it is first opened: two copies that both went on as one device
// could never be brought together again.
Result<void> forgetDevice(const path& database) {
    return guarded([&]() -> Result<void> {
        SQLite::Database raw(database.string(), SQLite::OPEN_READWRITE);
        raw.exec("DELETE FROM device_state WHERE name = 'device'");
        return {};
    });
}

class Restoring {
public:
    // 'incomplete': what is damaged is noted and left out.
    Restoring(const path& folder, std::string passphrase, const Progress& progress, std::uint64_t total,
              bool incomplete)
        : unpacking_(folder), passphrase_(std::move(passphrase)), progress_(progress), total_(total),
          incomplete_(incomplete) {}

    Result<void> run(const std::vector<path>& files) {
        if (auto made = unpacking_.files()->makeFolder(unpacking_.folder() / "media"); !made) {
            return made;
        }
        for (const path& file : files) {
            if (auto taken = take(file); !taken) {
                return taken;
            }
        }
        for (const auto& [name, here] : newest_.media) {
            if (!have_.contains(name)) {
                missing_.push_back(name);
            }
        }
        return {};
    }

    Result<Restored> finish(const path& folder) {
        const path database = unpacking_.folder() / "shop.db";
        Result<void> done = forgetDevice(database);
        if (done) {
            done = unpacking_.files()->syncFolder(unpacking_.folder() / "media");
        }
        Restored restored{summaryOf(newest_), missing_, {}, {}};
        if (done) {
            auto store = Store::open(unpacking_.folder());
            if (!store) {
                return tl::unexpected(store.error());
            }
            auto report = store->check([this](std::size_t checked, std::size_t all) {
                return told(total_ + (all == 0 ? total_ : total_ * checked / all));
            });
            if (!report) {
                return tl::unexpected(report.error());
            }
            restored.report = std::move(*report);
        }
        if (done) {
            done = unpacking_.keepAs(folder);
        }
        return done ? Result<Restored>(std::move(restored)) : tl::unexpected(done.error());
    }

    [[nodiscard]] const std::vector<std::string>& missing() const { return missing_; }
    [[nodiscard]] const BackupContent& newest() const { return newest_; }
    [[nodiscard]] const std::vector<std::string>& damage() const { return damage_; }

private:
    // Unpacking is one half, checking the other.
    [[nodiscard]] bool told(std::uint64_t done) const {
        return !progress_ || progress_(static_cast<std::size_t>(done), static_cast<std::size_t>(2 * total_));
    }

    Result<void> take(const path& file) {
        const path database = unpacking_.folder() / "database";
        std::error_code ignored;
        std::filesystem::remove(database, ignored);
        Writer writer(database, unpacking_.files());
        BackupVisitor visitor;
        visitor.database = [&](std::span<const std::byte> piece) { return writer.put(piece); };
        visitor.media = [&](const std::string& name, std::span<const std::byte> content) -> Result<void> {
            if (!have_.insert(name).second) {
                return {};
            }
            Writer media(unpacking_.folder() / "media" / name, unpacking_.files());
            auto put = media.put(content);
            return put ? media.end() : put;
        };
        visitor.progress = [this](std::uint64_t bytes) {
            done_ = std::min(done_ + bytes, total_);
            return told(done_);
        };
        if (incomplete_) {
            visitor.damage = [&](const std::string& what) {
                damage_.push_back(file.filename().string() + ": " + what);
            };
        }
        auto content = readBackup(file, passphrase_, visitor);
        if (!content) {
            auto problem = content.error();
            problem.message = file.string() + ": " + problem.message;
            return tl::unexpected(problem);
        }
        if (auto ended = writer.end(); !ended) {
            return ended;
        }
        if (newest_.id.empty() || newest_.at < content->at) {
            newest_ = std::move(*content);
            return unpacking_.files()->rename(database, unpacking_.folder() / "shop.db");
        }
        return unpacking_.files()->remove(database);
    }

    Unpacking unpacking_;
    std::string passphrase_;
    const Progress& progress_;
    std::uint64_t total_;
    std::uint64_t done_{};
    BackupContent newest_;
    std::set<std::string> have_;
    std::vector<std::string> missing_;
    bool incomplete_;
    std::vector<std::string> damage_;
};

} // namespace

Result<BackupSet> withEarlier(const path& file, const std::string& passphrase,
                              const std::function<bool()>& goesOn) {
    auto head = readBackupHead(file, passphrase);
    if (!head) {
        return tl::unexpected(head.error());
    }
    BackupSet set{std::move(*head), {file}, 0};
    std::set<std::string> wanted(set.head.follows.begin(), set.head.follows.end());
    const path folder = file.has_parent_path() ? file.parent_path() : path(".");
    std::error_code error;
    for (std::filesystem::directory_iterator at(folder, error), end; !error && at != end && !wanted.empty();
         at.increment(error)) {
        if (at->path().extension() != file.extension() || at->path().filename() == file.filename()) {
            continue;
        }
        if (goesOn && !goesOn()) {
            return tl::unexpected(backupCancelled());
        }
        if (const auto other = readBackupHead(at->path(), passphrase); other && wanted.erase(other->id) > 0) {
            set.files.push_back(at->path());
        }
    }
    set.wanting = wanted.size();
    return set;
}

Result<Restored> restoreBackup(const std::vector<path>& files, const path& folderGiven,
                               const std::string& passphrase, bool incomplete, const Progress& progress) {
    std::error_code error;
    path folder = std::filesystem::absolute(folderGiven, error).lexically_normal();
    if (!folder.has_filename()) {
        folder = folder.parent_path();
    }
    if (files.empty()) {
        return failed(Fault::Refused, "restore: name at least one backup");
    }
    if (auto may = mayRestoreTo(folder); !may) {
        return tl::unexpected(may.error());
    }
    std::uint64_t total = 0;
    for (const path& file : files) {
        const auto size = std::filesystem::file_size(file, error);
        total += error ? 0 : size;
    }
    Restoring restoring(folder, passphrase, progress, total, incomplete);
    if (auto done = restoring.run(files); !done) {
        return tl::unexpected(done.error());
    }
    if (!restoring.missing().empty() && !incomplete) {
        return failed(
            Fault::Refused,
            "restore: " + std::to_string(restoring.missing().size()) +
                " photos or memos are in earlier backups that were not named; name them too, or say "
                "that it may be incomplete. Nothing was restored.");
    }
    if (restoring.damage().empty()) {
        return restoring.finish(folder);
    }
    // The database may be what is damaged: its entries are gathered one by one.
    return salvage({}, folder, files, passphrase, progress).map([&](Salvaged saved) {
        return Restored{summaryOf(restoring.newest()), restoring.missing(), std::move(saved.report),
                        std::move(saved.faults)};
    });
}

Result<Mended> mendMedia(Store& store, const std::vector<path>& files, const std::string& passphrase,
                         const std::function<bool(std::uint64_t)>& goesOn) {
    const MediaFolder media(store.folder() / "media", store.files());
    auto named = store.mediaNamed();
    if (!named) {
        return tl::unexpected(named.error());
    }
    std::erase_if(*named, [&](const std::string& name) { return media.find(name) && !media.problem(name); });
    Mended mended;
    BackupVisitor visitor;
    visitor.progress = goesOn;
    path reading;
    visitor.damage = [&](const std::string& what) {
        mended.damage.push_back(reading.filename().string() + ": " + what);
    };
    visitor.media = [&](const std::string& name, std::span<const std::byte> content) -> Result<void> {
        if (!named->contains(name)) {
            return {};
        }
        const auto kept = store.keepMedia(content, name.substr(name.find('.') + 1));
        if (!kept) {
            return tl::unexpected(kept.error());
        }
        named->erase(name);
        mended.brought.push_back(name);
        return {};
    };
    for (const path& file : files) {
        reading = file;
        if (const auto read = readBackup(file, passphrase, visitor); !read) {
            return tl::unexpected(read.error());
        }
    }
    mended.wanting.assign(named->begin(), named->end());
    return mended;
}

} // namespace undercowl::store
