// Backups: rolling copies of the database beside it, and the whole shop in one file. Formats: docs/backup.md.
#pragma once

#include "core/store/seal.h"
#include "core/store/store.h"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace undercowl::store {

// --- rolling copies, "FOLDER/backups/shop-20261126T071500Z.db"

struct RollingBackup {
    std::filesystem::path file;
    job::TimeMs at{};
    std::uint64_t bytes{};
};

// Newest first; none where the folder is missing. Needs no store that can be opened.
[[nodiscard]] std::vector<RollingBackup> rollingBackups(const std::filesystem::path& folder);

// Copies the database with SQLite's online backup while others go on working, checks the copy, syncs it and
// gives it its name; then drops old ones: kept are the newest three, the newest of each of the last seven
// days and of each of the last four weeks. A copy that fails its check is not kept, and nothing is dropped.
[[nodiscard]] Result<RollingBackup> backUpDatabase(const Store& store);

// Whether the last rolling copy is older than a day, or there is none.
[[nodiscard]] bool backupIsDue(const std::filesystem::path& folder, job::TimeMs now);

// --- the whole shop in one file

struct BackupMade {
    std::string id;
    job::TimeMs at{};
    std::size_t entries{};
    std::size_t media{};             // of the shop
    std::size_t mediaHere{};         // of them, in this file; the others are in the backups that it follows
    std::uint64_t bytes{};           // of the file
    std::vector<std::string> faults; // media that are missing or rotten in the shop: not in the backup
};

struct BackupWish {
    std::string passphrase;                     // empty: not encrypted
    std::vector<std::filesystem::path> earlier; // backups whose media need not be copied again
    std::string earlierPassphrase;              // of those, where they are sealed
    SealCost cost;
    Progress progress; // in bytes, of writing and then of verifying
};

// Writes beside, syncs, renames, then reads the file again and compares everything in it with what was meant
// to be written. Never over a file that exists. A cancelled or failed one leaves nothing behind.
[[nodiscard]] Result<BackupMade> writeBackup(const Store& store, const std::filesystem::path& file,
                                             const BackupWish& wish = {});

// How a backup begins.
struct BackupHead {
    bool sealed{};
    std::string id;                   // this and what follows are empty where no passphrase was given
    std::vector<std::string> follows; // ids of the backups that hold the rest of its media
    job::TimeMs at{};
    std::size_t entries{};
};

// Reads no more than the beginning of the file. Of a sealed one nothing but that it is sealed is told as long
// as there is no passphrase. Refused: no backup, a wrong passphrase.
[[nodiscard]] Result<BackupHead> readBackupHead(const std::filesystem::path& file,
                                                const std::string& passphrase = {});

// A backup with those of its folder that it follows: what restoreBackup() wants.
struct BackupSet {
    BackupHead head;
    std::vector<std::filesystem::path> files; // the backup first
    std::size_t wanting{};                    // backups that it follows and that are not there
};

// Earlier ones are looked for among files with the same suffix and the same passphrase. Each sealed one takes
// its time: 'goesOn' is asked before the next, and false cancels.
[[nodiscard]] Result<BackupSet> withEarlier(const std::filesystem::path& file,
                                            const std::string& passphrase = {},
                                            const std::function<bool()>& goesOn = {});

// Reads everything in the file and checks it. Refused with the reason.
[[nodiscard]] Result<BackupMade> verifyBackup(const std::filesystem::path& file,
                                              const std::string& passphrase = {},
                                              const Progress& progress = {});

struct Restored {
    BackupMade from;                  // the newest of the backups
    std::vector<std::string> missing; // media in none of them; empty unless 'incomplete' was allowed
    CheckReport report;               // of the store in its new place
    std::vector<std::string> damage;  // of the backups; empty unless 'incomplete' was allowed
};

// Puts the newest of these backups, with media from all of them, into a folder that does not exist or is
// empty. The folder appears whole or not at all. The store gets a device id of its own, so that the one it
// was taken from may go on. Refused when a file is damaged or earlier backups are wanting, unless
// 'incomplete' is set: then what can be read of them is restored. A second reading, for what is damaged,
// begins its progress anew. Until it is whole the folder has another name, FOLDER.incoming-...
[[nodiscard]] Result<Restored> restoreBackup(const std::vector<std::filesystem::path>& files,
                                             const std::filesystem::path& folder,
                                             const std::string& passphrase = {}, bool incomplete = false,
                                             const Progress& progress = {});

// --- mending

struct Mended {
    std::vector<std::string> brought; // media put back
    std::vector<std::string> wanting; // named by an entry, rotten or missing, and in none of the backups
    std::vector<std::string> damage;  // of the backups
};

// Brings media that are missing or rotten back from whole-shop backups, as far as these can be read.
// 'goesOn' is called with the bytes that were read since the last call; false cancels.
[[nodiscard]] Result<Mended> mendMedia(Store& store, const std::vector<std::filesystem::path>& files,
                                       const std::string& passphrase = {},
                                       const std::function<bool(std::uint64_t)>& goesOn = {});

} // namespace undercowl::store
