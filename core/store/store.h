// The shop's store: one folder with the database, the media files and nothing else.
//
//   FOLDER/shop.db   SQLite, WAL, synchronous=FULL: entries, projections, drafts, settings of this device
//   FOLDER/media/    photos and memos, named by the hash of their content
//
// An append returns after the sync has returned: only then may 'saved' be shown. Not for use from several
// threads at once; a second Store on the same folder, in this or another process, is allowed and sees
// committed work.
#pragma once

#include "core/job/model.h"
#include "core/job/standing.h"
#include "core/job/waits.h"
#include "core/journal/entry.h"
#include "core/store/result.h"

#include <cstddef>
#include <filesystem>
#include <functional>
#include <limits>
#include <memory>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::store {

using job::Id;
class Files;

// One line of the list of jobs, from one indexed query.
struct JobLine {
    Id id;
    std::string number;
    Id machineId;
    std::string machine; // "Marrowin Tern 125, 1987"
    std::string frameNumber;
    std::string owner; // name
    std::string reason;
    job::Moment moment{};
    job::Message stopped;
    job::Message next;
    bool waiting{};   // a task of it waits
    int openUnsafe{}; // unsettled findings of severity unsafe
    job::TimeMs lastAt{};
    job::Waiting waits; // what the machine waits for
    bool rechecks{};    // something is to be looked at again, or was

    friend bool operator==(const JobLine&, const JobLine&) = default;
};

enum class HitKind : std::uint8_t { Machine, Owner, Job, Finding, Step, Wire, Part, Reading, Memo, Photo };

struct Hit {
    HitKind kind{};
    Id job; // empty for a machine or an owner without a job
    Id subject;
    std::string title;                       // the line that was found
    std::string snippet;                     // words around the hit; [ and ] stand round what matched
    std::string machine;                     // the machine that it belongs to
    std::optional<job::Severity> severity{}; // of a finding
    std::string connector{};                 // title of what a wire is gathered in

    friend bool operator==(const Hit&, const Hit&) = default;
};

struct Media {
    std::string name; // BLAKE2b-256 of the content in hex, with the suffix: "9f...c1.jpg"
    std::filesystem::path file;
};

struct CheckReport {
    std::vector<std::string> faults; // each names the entry, file or table; empty when the store is sound
    std::size_t entries{};
    std::size_t mediaFiles{};
    std::size_t jobs{};

    [[nodiscard]] bool sound() const { return faults.empty(); }
};

// Injected so that tests set the time.
using WallClock = std::function<job::TimeMs()>;
[[nodiscard]] WallClock systemClock();

// Called now and then in long work with done and total; answers false to cancel.
using Progress = std::function<bool(std::size_t done, std::size_t total)>;

class Store {
public:
    // Opens the store in the folder, creating it if the folder is empty or missing. Migrates an older schema
    // after a backup beside it. Never deletes or overwrites a database that cannot be opened.
    [[nodiscard]] static Result<Store> open(const std::filesystem::path& folder,
                                            WallClock clock = systemClock());
    // The same with another file system below the media folder (core/store/files.h).
    [[nodiscard]] static Result<Store> open(const std::filesystem::path& folder, WallClock clock,
                                            std::shared_ptr<Files> files);
    // What can be read of the store in the folder, for looking only: of a damaged database, or of one that a
    // newer version wrote. The entries whose seals fit are read, and everything shown follows from them, in
    // memory; the folder is not touched. Where entries are gone, the newest copy beside it fills the gaps.
    // check() tells what could not be read. Fails when there is no entry in either. 'because' is what open()
    // failed with, for readOnly() to tell.
    [[nodiscard]] static Result<Store> openReadable(const std::filesystem::path& folder,
                                                    WallClock clock = systemClock(),
                                                    Fault because = Fault::Damaged);
    ~Store();
    Store(Store&&) noexcept;
    Store& operator=(Store&&) noexcept;

    // --- this device
    [[nodiscard]] Id device() const;
    [[nodiscard]] Id mechanic() const; // who works on this device; empty until chosen
    Result<void> chooseMechanic(const Id& mechanic);
    [[nodiscard]] Result<std::vector<job::Mechanic>> mechanics() const;
    [[nodiscard]] std::string setting(std::string_view name) const; // empty if never set; local to the device
    Result<void> set(std::string_view name, std::string_view value);
    [[nodiscard]] Id newId() const;
    [[nodiscard]] job::TimeMs now() const;
    [[nodiscard]] const std::filesystem::path& folder() const;
    [[nodiscard]] std::shared_ptr<Files> files() const; // what the store was opened with
    // Why nothing can be said here, with the remedy; empty for a store that was opened to be worked with.
    [[nodiscard]] std::string readOnly() const;

    // --- saying something: one transaction for all drafts, synced on return. Refused as a whole when one of
    // them does not fit, when no mechanic has been chosen (but for 'mechanic.named'), or when it names a
    // media file that is not there.
    [[nodiscard]] Result<std::vector<journal::Entry>> append(std::span<const journal::Draft> drafts);
    [[nodiscard]] Result<journal::Entry> append(const journal::Draft& draft);

    // Writes the bytes beside, syncs, renames; the same content twice gives the same file. Suffix: "jpg",
    // "png", "wav".
    [[nodiscard]] Result<Media> keepMedia(std::span<const std::byte> bytes, std::string_view suffix);
    [[nodiscard]] Result<std::filesystem::path>
    media(std::string_view name) const; // NotFound, Refused for a bad name

    // --- reading
    [[nodiscard]] Result<job::Job> job(const Id& id) const;
    [[nodiscard]] Result<job::Machine> machine(const Id& id) const;
    [[nodiscard]] Result<job::Owner> owner(const Id& id) const;
    // Last worked on first: all that are open, and of those that are done at most 'mostDone'.
    [[nodiscard]] Result<std::vector<JobLine>>
    jobs(std::size_t mostDone = std::numeric_limits<std::int64_t>::max()) const;
    [[nodiscard]] Result<Id> jobByNumberOrId(std::string_view text) const;
    // Every word, or the beginning of one, must occur; case and diacritics do not matter. Best first, at most
    // 'most'.
    [[nodiscard]] Result<std::vector<Hit>> find(std::string_view words, std::size_t most = 50) const;
    [[nodiscard]] Result<std::vector<journal::Entry>> entries(const Id& stream) const; // in order of effect

    [[nodiscard]] Result<std::set<std::string>> mediaNamed() const; // by any entry

    // --- entries from elsewhere (an archive): verified, merged by set union, projections redone. Returns how
    // many were new.
    [[nodiscard]] Result<std::size_t> merge(std::span<const journal::Entry> entries);

    // Brings in what was saved from a damaged store: every entry whose seal fits and that is not here yet,
    // also when entries before it, or the media that it names, are lost. For a store that is new.
    [[nodiscard]] Result<std::size_t> adopt(std::span<const journal::Entry> entries);

    // How many entries merge() would add, or why it would refuse them; looks at the entries alone, not at
    // media.
    [[nodiscard]] Result<std::size_t> mergeable(std::span<const journal::Entry> entries) const;

    // Drops the bodies of a stream's entries (an owner's data on request); the chain still verifies.
    Result<std::size_t> redact(const Id& stream);

    // --- drafts: what is being entered and not yet said. Written on each change, local to the device.
    Result<void> keepDraft(std::string_view form, std::string_view json);
    [[nodiscard]] std::optional<std::string> draft(std::string_view form) const;
    Result<void> dropDraft(std::string_view form);

    // --- care
    [[nodiscard]] Result<CheckReport> check(const Progress& progress = {}) const;
    Result<void> rebuild(const Progress& progress = {}); // projections from the entries alone

    struct State; // core/store/state.h

private:
    explicit Store(std::unique_ptr<State> state);
    std::unique_ptr<State> state_;
};

} // namespace undercowl::store
