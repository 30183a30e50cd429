// One job as a ZIP file: job.json with the entries, the media, the hand-over PDF. Format: docs/archive.md.
#pragma once

#include "core/store/store.h"

#include <filesystem>
#include <string>
#include <vector>

namespace undercowl::store {

struct ArchiveContent {
    Id job;
    std::string number;
    std::size_t entries{};
    std::size_t media{};
    bool record{}; // a hand-over PDF is in it
};

struct Imported {
    ArchiveContent content;
    std::size_t newEntries{};
    std::size_t newMedia{};
};

// Writes beside, syncs, renames. 'record' is the hand-over PDF's bytes, or empty. Fails when a media file is
// missing or its content does not fit its name.
[[nodiscard]] Result<ArchiveContent> exportJob(const Store& store, const Id& job,
                                               const std::filesystem::path& file,
                                               std::span<const std::byte> record = {});

// Reads the whole archive and checks everything in it, without a store. Refused: cut short, a wrong hash, a
// name that leaves the archive, more than it declares, more than 2 GiB unpacked, a broken chain.
[[nodiscard]] Result<ArchiveContent> verifyArchive(const std::filesystem::path& file);

// Verifies first; then merges. The same archive twice changes nothing. A refused archive changes nothing.
[[nodiscard]] Result<Imported> importArchive(Store& store, const std::filesystem::path& file);

} // namespace undercowl::store
