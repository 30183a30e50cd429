// Makes shops of any size: every job with the same hundred entries and ten small photos, nine of ten jobs
// handed over long ago.
#pragma once

#include "core/store/store.h"

#include <filesystem>
#include <string_view>
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

// A shop with one machine, stripped in that many steps, each with a photo: the one that is given, as a file
// of its own for each step. 'photo' is a whole JPEG file. The folder must not exist. Ends the program where
// the store refuses.
[[nodiscard]] MadeShop makeLongStrip(const std::filesystem::path& folder, std::size_t steps,
                                     std::string_view photo);

} // namespace undercowl::bench
