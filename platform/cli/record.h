// The owner's record as files, as the commands "handover" and "demo" write it.
#pragma once

#include "platform/cli/command.h"

#include <cstddef>
#include <filesystem>
#include <span>
#include <vector>

namespace undercowl::platform {

struct RecordFiles {
    std::vector<std::byte> pdf;
    std::string html; // stands alone
};

// Makes the record of the job. Starts the printing of this program; the error has been complained about.
[[nodiscard]] tl::expected<RecordFiles, Exit> recordOf(const store::Store& store, const job::Id& job);

// Writes beside, then renames, so that a file of that name is whole or as it was. Complains about a failure.
[[nodiscard]] tl::expected<void, Exit> writeFile(const std::filesystem::path& file,
                                                 std::span<const std::byte> bytes);

} // namespace undercowl::platform
