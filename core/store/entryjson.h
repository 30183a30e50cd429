// job.json of an archive. docs/archive.md and docs/archive.schema.json describe it.
#pragma once

#include "core/journal/entry.h"
#include "core/store/result.h"

#include <set>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::store {

inline constexpr std::string_view archiveFormat = "undercowl job archive";
inline constexpr int archiveVersion = 1;
inline constexpr std::size_t mostArchivedEntries = 200'000;

struct JobFile {
    job::Id job;
    std::string number;
    std::vector<journal::Entry> entries;
};

[[nodiscard]] std::string toJson(const JobFile& file);
// Refused with the field at fault; an archive of a newer version says so.
[[nodiscard]] Result<JobFile> jobFileFromJson(std::string_view text);

// Ids of every machine and owner that the job has ever been said to have.
[[nodiscard]] std::set<job::Id> surroundingsNamed(std::span<const journal::Entry> entries);

} // namespace undercowl::store
