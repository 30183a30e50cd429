// Writing, verifying and restoring the whole shop.
#include "core/store/backup.h"

#include "core/journal/digest.h"
#include "core/store/archivenames.h"
#include "core/store/backupfile.h"
#include "core/store/database.h"
#include "core/store/hashbeside.h"
#include "core/store/media.h"

#include <algorithm>
#include <future>

namespace undercowl::store {
namespace {

using std::filesystem::path;

class Bytes { // done and to be done
public:
    Bytes(const Progress& progress, std::uint64_t total) : progress_(progress), total_(total) {}
    bool operator()(std::uint64_t more) {
        done_ = std::min(done_ + more, total_);
        return !progress_ || progress_(static_cast<std::size_t>(done_), static_cast<std::size_t>(total_));
    }

private:
    const Progress& progress_;
    std::uint64_t total_;
    std::uint64_t done_{};
};

// Removed at the end, whatever happens.
class Passing {
public:
    Passing(path file, std::shared_ptr<Files> files) : file_(std::move(file)), files_(std::move(files)) {}
    Passing(const Passing&) = delete;
    Passing& operator=(const Passing&) = delete;
    ~Passing() { (void)files_->remove(file_); }
    [[nodiscard]] const path& file() const { return file_; }

private:
    path file_;
    std::shared_ptr<Files> files_;
};

class Writing {
public:
    Writing(const Store& store, ByteSink& to, Bytes& bytes) : store_(store), tar_(to), bytes_(bytes) {}

    Result<void> run(BackupContent& content, const path& database, const std::vector<std::string>& names,
                     std::vector<std::string>& faults) {
        time_ = content.at / 1000;
        Result<void> done = add(backupHead, headJson(content));
        if (done) {
            done = addDatabase(database);
        }
        for (const std::string& name : names) {
            if (done && !content.media.contains(name)) {
                done = addMedia(name, content, faults);
            }
        }
        if (done) {
            done = add(backupMediaList, mediaListOf(content));
        }
        if (done) {
            const std::string sums = checksums_;
            done = tar_.add(checksumsName, std::as_bytes(std::span(sums)), time_);
        }
        return done ? tar_.finish() : done;
    }

private:
    Result<void> add(const std::string& name, const std::string& content) {
        checksums_ += journal::blake2b256(content) + "  " + name + "\n";
        return tar_.add(name, std::as_bytes(std::span(content)), time_);
    }

    Result<void> addDatabase(const path& database) {
        std::error_code error;
        if (auto begun = tar_.begin(backupDatabase, std::filesystem::file_size(database, error), time_);
            !begun) {
            return begun;
        }
        HashBeside hash;
        Result<void> done;
        const auto read = store_.files()->read(database, [&](std::span<const std::byte> piece) {
            hash.add(piece);
            if (done) {
                done = tar_.data(piece);
            }
            if (done && !bytes_(piece.size())) {
                done = tl::unexpected(backupCancelled());
            }
        });
        checksums_ += hash.finish() + "  " + backupDatabase + "\n";
        return read ? done : read;
    }

    // Read whole and looked at before a byte of it is written: one rotten photo does not spoil the backup.
    Result<void> addMedia(const std::string& name, BackupContent& content, std::vector<std::string>& faults) {
        std::string bytes;
        const auto read =
            store_.files()->read(store_.folder() / "media" / name,
                                 [&](std::span<const std::byte> piece) { bytes += text(piece); });
        const std::string hash = journal::blake2b256(bytes);
        if (!read || !name.starts_with(hash)) {
            faults.push_back(read ? "media file " + name + ": its content does not fit its name"
                                  : read.error().message);
            return {};
        }
        if (!bytes_(bytes.size())) {
            return tl::unexpected(backupCancelled());
        }
        content.media[name] = true;
        checksums_ += hash + "  " + mediaFolder + name + "\n";
        return tar_.add(mediaFolder + name, std::as_bytes(std::span(bytes)), time_);
    }

    const Store& store_;
    TarWriter tar_;
    Bytes& bytes_;
    std::string checksums_;
    std::int64_t time_{};
};

Result<void> followEarlier(const BackupWish& wish, const std::vector<std::string>& names,
                           BackupContent& content) {
    for (const path& file : wish.earlier) {
        const auto earlier = readBackup(file, wish.earlierPassphrase);
        if (!earlier) {
            return tl::unexpected(earlier.error());
        }
        content.follows.push_back(earlier->id);
        for (const auto& [name, here] : earlier->media) {
            if (here && std::binary_search(names.begin(), names.end(), name)) {
                content.media[name] = false;
            }
        }
    }
    return {};
}

Result<std::size_t> entriesIn(const path& database, const std::string& vfs) {
    return guarded([&]() -> Result<std::size_t> {
        SQLite::Database look(database.string(), SQLite::OPEN_READONLY, 0, vfs);
        return static_cast<std::size_t>(look.execAndGet("SELECT count(*) FROM entry").getInt64());
    });
}

} // namespace

Result<BackupMade> writeBackup(const Store& store, const path& file, const BackupWish& wish) {
    std::error_code error;
    if (std::filesystem::exists(std::filesystem::symlink_status(file, error))) {
        return failed(Fault::Refused, "backup: " + file.string() + " exists already; give another name");
    }
    const auto files = store.files();
    const Passing database(store.folder() / incomingFolder / store.newId(), files);
    if (auto copied = copyDatabase(store, database.file(), Copy::Passing); !copied) {
        return tl::unexpected(copied.error());
    }
    // After the database: every file that an entry in it names is there by now.
    std::vector<std::string> names;
    {
        auto all = MediaFolder(store.folder() / "media", files).names();
        if (!all) {
            return tl::unexpected(all.error());
        }
        std::copy_if(all->begin(), all->end(), std::back_inserter(names), isMediaName);
    }
    BackupContent content;
    content.id = store.newId();
    content.at = store.now();
    const auto entries = entriesIn(database.file(), files->vfs());
    if (!entries) {
        return tl::unexpected(entries.error());
    }
    content.entries = *entries;
    if (auto followed = followEarlier(wish, names, content); !followed) {
        return tl::unexpected(followed.error());
    }
    std::uint64_t total = std::filesystem::file_size(database.file(), error);
    for (const std::string& name : names) {
        if (!content.media.contains(name)) {
            if (const auto size = files->size(store.folder() / "media" / name); size && *size) {
                total += **size;
            }
        }
    }
    Bytes bytes(wish.progress, 2 * total);
    std::vector<std::string> faults;
    // Checked while it is being written. What stands in for the disk in tests counts on one thread.
    auto sound = std::async(files->vfs().empty() ? std::launch::async : std::launch::deferred,
                            [&] { return checkDatabase(database.file(), files->vfs()); });
    {
        FileSink out(file, files);
        const auto sealed = wish.passphrase.empty() ? nullptr : sealing(out, wish.passphrase, wish.cost);
        Writing writing(store, sealed ? *sealed : static_cast<ByteSink&>(out), bytes);
        const auto written = writing.run(content, database.file(), names, faults);
        if (!written) {
            return tl::unexpected(written.error());
        }
    }
    // What is on the disk now, against what was meant; the check may still be going on beside it.
    auto read = readBackup(file, wish.passphrase, {{}, {}, std::ref(bytes), {}});
    if (read && (read->id != content.id || read->media != content.media)) {
        read = failed(Fault::Damaged, "backup: what was written is not what can be read again");
    }
    if (const auto checked = sound.get(); read && !checked) {
        read = tl::unexpected(checked.error());
    }
    if (!read) {
        (void)files->remove(file);
        return tl::unexpected(read.error());
    }
    auto made = summaryOf(*read);
    made.faults = std::move(faults);
    return made;
}

Result<BackupMade> verifyBackup(const path& file, const std::string& passphrase, const Progress& progress) {
    std::error_code ignored;
    Bytes bytes(progress, std::filesystem::file_size(file, ignored));
    return readBackup(file, passphrase, {{}, {}, std::ref(bytes), {}}).map(summaryOf);
}

} // namespace undercowl::store
