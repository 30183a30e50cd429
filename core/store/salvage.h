// A damaged store brought into a new place, as far as it can be read and backups fill the gaps.
#pragma once

#include "core/store/store.h"

#include <filesystem>
#include <string>
#include <vector>

namespace undercowl::store {

struct Salvaged {
    std::size_t entries{};     // in the new store
    std::size_t fromBackups{}; // of them, those that only a backup still had
    std::size_t media{};
    std::vector<std::string> faults; // what could not be read, or was lost
    CheckReport report;              // of the new store
};

// Makes a new store in 'to', which must not exist or be empty, of every entry whose seal fits: from the
// database in 'from', from the rolling copies beside it, and from whole-shop backups. Media come from 'from'
// where their content still fits their name, else from the backups. 'from' is not touched. Fails, and makes
// nothing, when not one entry can be read. A damaged backup is read as far as it goes on. An empty 'from':
// there is no store, only backups. Refused where a newer version wrote 'from'. Progress is told of the bytes
// of the backups, which are read twice, and of the media in 'from'. The folder appears whole or not at all.
[[nodiscard]] Result<Salvaged> salvage(const std::filesystem::path& from, const std::filesystem::path& to,
                                       const std::vector<std::filesystem::path>& backups = {},
                                       const std::string& passphrase = {}, const Progress& progress = {});

} // namespace undercowl::store
