// One whole-shop backup as it is read: its members in their order, each checked as it goes by.
#pragma once

#include "core/store/backup.h"
#include "core/store/tar.h"

#include <functional>
#include <map>
#include <set>
#include <string>

namespace undercowl::store {

inline constexpr std::string_view backupFormat = "undercowl shop backup";
inline constexpr int backupVersion = 1;
inline const std::string backupHead = "backup.json";
inline const std::string backupDatabase = "shop.db";
inline const std::string backupMediaList = "media.txt";

struct BackupContent {
    std::string id;
    std::vector<std::string> follows; // ids of the backups that hold the rest of the media
    job::TimeMs at{};
    std::size_t entries{};
    std::map<std::string, bool> media; // name, and whether it is in this file
    std::uint64_t bytes{};             // of the file
};

// "20261126T071500.123Z": UTC, in names of files and folders.
[[nodiscard]] std::string stampOf(job::TimeMs at);

[[nodiscard]] std::string headJson(const BackupContent& content);
[[nodiscard]] std::string mediaListOf(const BackupContent& content);
[[nodiscard]] BackupMade summaryOf(const BackupContent& content);

// What to do with the database and with a media file's bytes; either may be empty. A media file is given
// whole and its content fits its name.
struct BackupVisitor {
    std::function<Result<void>(std::span<const std::byte>)> database;
    std::function<Result<void>(const std::string& name, std::span<const std::byte>)> media;
    std::function<bool(std::uint64_t bytes)> progress; // read since the last call; false cancels
    // Where it is set, what is damaged is told here and left out, and the rest is read as far as the file
    // goes on; the database that was given may then be anything.
    std::function<void(const std::string&)> damage;
};

// Reads and checks the whole file.
[[nodiscard]] Result<BackupContent> readBackup(const std::filesystem::path& file,
                                               const std::string& passphrase,
                                               const BackupVisitor& visitor = {});
// The same from a stream, whatever it is.
[[nodiscard]] Result<BackupContent> readBackup(ByteSource& from, const BackupVisitor& visitor = {});

// A copy of the store's database in one file of its own. The file must not exist. A lasting one is checked
// and synced; a passing one never needs to reach the medium, and is for the caller to check.
enum class Copy : std::uint8_t { Passing, Lasting };
[[nodiscard]] Result<void> copyDatabase(const Store& store, const std::filesystem::path& file, Copy copy);

[[nodiscard]] Result<void> checkDatabase(const std::filesystem::path& file, const std::string& vfs);

[[nodiscard]] Problem backupCancelled();

} // namespace undercowl::store
