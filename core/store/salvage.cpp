#include "core/store/salvage.h"

#include "core/store/backupfile.h"
#include "core/store/media.h"
#include "core/store/readable.h"
#include "core/store/state.h"
#include "core/store/unpacking.h"

#include "core/journal/fold.h"

#include <algorithm>
#include <map>

namespace undercowl::store {
namespace {

using journal::Entry;
using std::filesystem::path;

// Entries by device and number. What was read first stays: a backup must not bring back what an owner had
// redacted here.
class Gathering {
public:
    std::size_t add(std::vector<Entry> entries) {
        std::size_t fresh = 0;
        for (Entry& entry : entries) {
            std::pair key(entry.device, entry.number);
            fresh += entries_.try_emplace(std::move(key), std::move(entry)).second ? 1 : 0;
        }
        return fresh;
    }
    [[nodiscard]] bool empty() const { return entries_.empty(); }
    [[nodiscard]] std::vector<Entry> all() {
        std::vector<Entry> made;
        made.reserve(entries_.size());
        for (auto& [key, entry] : entries_) {
            made.push_back(std::move(entry));
        }
        return made;
    }

private:
    std::map<std::pair<Id, std::uint64_t>, Entry> entries_;
};

void addAll(std::vector<std::string>& to, const std::string& of, const std::vector<std::string>& more) {
    for (const std::string& one : more) {
        to.push_back(of);
        to.back().append(": ").append(one);
    }
}

std::uint64_t sizeOf(const path& file) {
    std::error_code error;
    const auto size = std::filesystem::file_size(file, error);
    return error ? 0 : size;
}

// The file goes when the object does.
struct Passing {
    path file;
    ~Passing() {
        std::error_code ignored;
        std::filesystem::remove(file, ignored);
    }
};

// The database's entries, and where some of them are gone those of the newest copy beside it that can be
// read.
Result<Readable> readWithCopies(const path& folder) {
    auto read = readWhatCanBe(folder / "shop.db");
    if (read && read->faults.empty()) {
        return read;
    }
    for (const RollingBackup& rolling : rollingBackups(folder)) {
        auto copy = readWhatCanBe(rolling.file);
        if (!copy) {
            continue;
        }
        Gathering gathering;
        Readable made = read ? std::move(*read) : Readable{};
        if (!read) {
            made.faults.push_back(read.error().message);
        }
        gathering.add(std::move(made.entries));
        if (const std::size_t fresh = gathering.add(std::move(copy->entries)); fresh > 0) {
            made.faults.push_back(std::to_string(fresh) + " entries are shown as the copy " +
                                  rolling.file.filename().string() + " has them");
        }
        made.entries = gathering.all();
        if (made.device.empty()) {
            made.device = std::move(copy->device);
            made.settings = std::move(copy->settings);
            made.drafts = std::move(copy->drafts);
        }
        return made;
    }
    return read;
}

std::string whyOnlyLooking(Fault because, int schema) {
    if (schema > migrations().back().to) {
        return "This shop was written by a newer version of the program and can only be looked at here. "
               "Bring "
               "this program up to date to go on working in it.";
    }
    if (because == Fault::DiskFull) {
        return "The disk is full, so this shop can only be looked at. Nothing in it was changed. Make "
               "room on the disk to go on working in it.";
    }
    return "This shop is damaged and can only be looked at. Nothing in it was changed. A new one can be made "
           "of "
           "what can be read.";
}

} // namespace

Result<Store> Store::openReadable(const path& folder, WallClock clock, Fault because) {
    auto read = readWithCopies(folder);
    if (!read) {
        return tl::unexpected(read.error());
    }
    auto database = Database::open(":memory:");
    if (!database) {
        return tl::unexpected(database.error());
    }
    auto state = std::make_unique<State>(folder, std::move(clock), std::move(*database), posixFiles());
    const auto ready = inTransaction(*state, [&]() -> Result<void> {
        for (const Entry& entry : read->entries) {
            insertEntry(state->database, entry);
        }
        for (const auto& [name, value] : read->device) {
            state->setValue("device_state", name, value);
        }
        for (const auto& [name, value] : read->settings) {
            state->setValue("setting", name, value);
        }
        state->rebuildAll({});
        state->forget();
        state->refresh();
        return {};
    });
    if (!ready) {
        return tl::unexpected(ready.error());
    }
    state->unread = std::move(read->faults);
    state->readOnly = whyOnlyLooking(because, read->schema);
    return Store(std::move(state));
}

Result<std::size_t> Store::adopt(std::span<const Entry> entries) {
    return inTransaction(*state_, [&]() -> Result<std::size_t> {
        std::size_t count = 0;
        journal::Clock newest = state_->newest;
        for (const Entry& entry : entries) {
            if (journal::sealProblem(entry) || entryById(state_->database, entry.id) ||
                entryByNumber(state_->database, entry.device, entry.number)) {
                continue;
            }
            insertEntry(state_->database, entry);
            newest = std::max(newest, entry.clock);
            ++count;
        }
        state_->newest = newest;
        state_->setValue("device_state", "merged_ms", std::to_string(newest.wallMs));
        state_->setValue("device_state", "merged_counter", std::to_string(newest.counter));
        state_->rebuildAll({});
        return count;
    });
}

Result<std::set<std::string>> Store::mediaNamed() const {
    return guarded([&]() -> Result<std::set<std::string>> {
        std::set<std::string> names;
        forEachEntry(state_->database, [&](const Entry& entry) {
            if (auto name = journal::mediaNamed(entry); !name.empty()) {
                names.insert(std::move(name));
            }
            return true;
        });
        return names;
    });
}

namespace {

// Settings, drafts and the mechanic at work, of this device.
void carryOver(Store& store, const Readable& read) {
    for (const auto& [name, value] : read.settings) {
        (void)store.set(name, value);
    }
    for (const auto& [form, json] : read.drafts) {
        (void)store.keepDraft(form, json);
    }
    if (const auto mechanic = read.device.find("mechanic"); mechanic != read.device.end()) {
        (void)store.chooseMechanic(mechanic->second);
    }
}

// Who said something last; empty when nobody did.
Id lastAtWork(const std::vector<Entry>& entries) {
    const Entry* last = nullptr;
    for (const Entry& entry : entries) {
        if (!entry.mechanic.empty() && (last == nullptr || journal::before(*last, entry))) {
            last = &entry;
        }
    }
    return last == nullptr ? Id{} : last->mechanic;
}

class Salvaging {
public:
    Salvaging(const path& to, std::function<bool(std::uint64_t)> goesOn)
        : passing_(to.string() + ".incoming-" + journal::newId(0)), goesOn_(std::move(goesOn)) {}

    void database(const path& file, bool backup) {
        auto read = readWhatCanBe(file);
        if (!read) {
            made_.faults.push_back(file.filename().string() + ": " + read.error().message);
            return;
        }
        if (!backup) {
            addAll(made_.faults, file.filename().string(), read->faults);
            tooNew_ = read->schema > migrations().back().to;
        }
        const std::size_t fresh = gathering_.add(std::move(read->entries));
        made_.fromBackups += backup ? fresh : 0;
        // Settings and drafts are not found on the pages of a database that cannot be opened.
        if (!first_ || (first_->device.empty() && !read->device.empty())) {
            read->entries.clear();
            first_ = std::move(*read);
        }
    }

    // The newest first: what an owner had redacted does not come back from an earlier one.
    Result<void> backups(const std::vector<path>& files, const std::string& passphrase) {
        std::vector<std::unique_ptr<Unpacked>> unpacked;
        for (const path& file : files) {
            auto one = std::make_unique<Unpacked>();
            one->passing.file = passing_.string() + "-" + std::to_string(unpacked.size());
            FileSink sink(one->passing.file, posixFiles());
            BackupVisitor visitor;
            visitor.progress = goesOn_;
            visitor.database = [&](std::span<const std::byte> piece) { return sink.put(piece); };
            visitor.damage = [&](const std::string& what) {
                made_.faults.push_back(file.filename().string() + ": " + what);
            };
            const auto read = readBackup(file, passphrase, visitor);
            if (!read) {
                return tl::unexpected(read.error());
            }
            if (auto ended = sink.end(); !ended) {
                return ended;
            }
            one->at = read->at;
            unpacked.push_back(std::move(one));
        }
        std::stable_sort(unpacked.begin(), unpacked.end(),
                         [](const auto& a, const auto& b) { return a->at > b->at; });
        for (const auto& one : unpacked) {
            database(one->passing.file, true);
        }
        return {};
    }

    Result<Salvaged> finish(const path& from, const path& to, const std::vector<path>& backups,
                            const std::string& passphrase) {
        if (tooNew_) {
            return failed(Fault::TooNew, "salvage: " + from.string() +
                                             " was written by a newer version, of which not everything is "
                                             "known here. Nothing was made; update this program.");
        }
        if (gathering_.empty()) {
            std::string why;
            for (const std::string& fault : made_.faults) {
                why += "; " + fault;
            }
            return failed(Fault::Damaged,
                          "salvage: not one entry can be read, and nothing was made. Name a backup "
                          "with --from" +
                              why);
        }
        if (!goesOn_(0)) { // also where there is nothing to copy
            return tl::unexpected(backupCancelled());
        }
        auto store = Store::open(to);
        if (!store) {
            return tl::unexpected(store.error());
        }
        if (!from.empty() && !media(from, *store)) {
            return tl::unexpected(backupCancelled());
        }
        const std::vector<Entry> entries = gathering_.all();
        auto adopted = store->adopt(entries);
        if (!adopted) {
            return tl::unexpected(adopted.error());
        }
        made_.entries = *adopted;
        if (first_) {
            carryOver(*store, *first_);
        }
        if (const Id last = lastAtWork(entries); store->mechanic().empty() && !last.empty()) {
            (void)store->chooseMechanic(last);
        }
        const auto mended = mendMedia(*store, backups, passphrase, goesOn_);
        if (!mended) {
            return tl::unexpected(mended.error());
        }
        made_.media += mended->brought.size();
        auto report = store->check();
        if (!report) {
            return tl::unexpected(report.error());
        }
        made_.report = std::move(*report);
        return std::move(made_);
    }

private:
    // Whether all of it was looked at: false when cancelled.
    bool media(const path& from, Store& store) {
        const auto files = posixFiles();
        const MediaFolder old(from / "media", files);
        const auto names = old.names();
        for (const std::string& name : names ? *names : std::vector<std::string>{}) {
            if (!goesOn_(sizeOf(from / "media" / name))) {
                return false;
            }
            if (!isMediaName(name) || old.problem(name)) {
                made_.faults.push_back("media file " + name + ": is not what its name says");
                continue;
            }
            std::vector<std::byte> bytes;
            const auto read = files->read(from / "media" / name, [&](std::span<const std::byte> piece) {
                bytes.insert(bytes.end(), piece.begin(), piece.end());
            });
            const auto kept = read ? store.keepMedia(bytes, name.substr(name.find('.') + 1))
                                   : Result<Media>(tl::unexpected(read.error()));
            if (!kept) {
                made_.faults.push_back("media file " + name + ": " + kept.error().message);
            }
            made_.media += kept ? 1 : 0;
        }
        return true;
    }

    // A backup's database in a file of its own.
    struct Unpacked {
        Passing passing;
        job::TimeMs at{};
    };

    path passing_; // how the names of such files begin
    std::function<bool(std::uint64_t)> goesOn_;
    Gathering gathering_;
    bool tooNew_{};
    Salvaged made_;
    std::optional<Readable> first_;
};

} // namespace

Result<Salvaged> salvage(const path& from, const path& to, const std::vector<path>& backups,
                         const std::string& passphrase, const Progress& progress) {
    std::error_code error;
    if (std::filesystem::exists(to, error) && !std::filesystem::is_empty(to, error)) {
        return failed(Fault::Refused, "salvage: there is something in " + to.string() +
                                          " already; nothing is written over it. Name a new folder.");
    }
    std::uint64_t total = 0;
    for (const path& file : backups) {
        total += 2 * sizeOf(file);
    }
    if (!from.empty()) {
        for (std::filesystem::directory_iterator at(from / "media", error), end; !error && at != end;
             at.increment(error)) {
            total += sizeOf(at->path());
        }
    }
    Salvaging salvaging(to, [&progress, total, done = std::uint64_t{0}](std::uint64_t bytes) mutable {
        done = std::min(done + bytes, total);
        return !progress || progress(static_cast<std::size_t>(done), static_cast<std::size_t>(total));
    });
    if (!from.empty()) {
        salvaging.database(from / "shop.db", false);
        for (const RollingBackup& rolling : rollingBackups(from)) {
            salvaging.database(rolling.file, true);
        }
    }
    if (auto read = salvaging.backups(backups, passphrase); !read) {
        return tl::unexpected(read.error());
    }
    Unpacking making(to);
    auto made = salvaging.finish(from, making.folder(), backups, passphrase);
    if (!made) {
        return made;
    }
    return making.keepAs(to).map([&] { return std::move(*made); });
}

} // namespace undercowl::store
