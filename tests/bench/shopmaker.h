// Makes shops of any size: every job with the same hundred entries and ten small photos, nine of ten jobs
// handed over long ago.
#pragma once

#include "core/store/store.h"

#include <filesystem>
#include <vector>

namespace undercowl::bench {

struct MadeShop {
    std::filesystem::path folder;
    std::size_t jobs{};
    std::size_t entries{};
    std::vector<job::Id> open; // some of the jobs that are worked on
};

// The folder must not exist. Ends the program where the store refuses.
[[nodiscard]] MadeShop makeShop(const std::filesystem::path& folder, std::size_t jobs);

} // namespace undercowl::bench
