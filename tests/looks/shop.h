// The demo shop with its wires confirmed by a mechanic, so that every page has something to show.
#pragma once

#include "platform/demo/shop.h"
#include "qml/shell/session.h"

#include <filesystem>
#include <memory>

namespace undercowl::looks {

struct MadeShop : demo::Shop {
    job::Id finding; // an open one of its job
    job::Id task;    // of its job
    job::Id part;    // of its job
    job::Id placed;  // a strip step of its job whose hardware is on its photo
    // Backups of it, in a folder of their own beside it: sealed, and cut off.
    std::filesystem::path sealed;
    std::filesystem::path cut;
};

// Makes the demo shop in the folder, its backups, and beside it a second one brought back from them; ends the
// program with the reason when that fails.
[[nodiscard]] MadeShop makeShop(const std::filesystem::path& folder);

// The id of a connector of that shop with the same photo, of which nothing was read yet.
inline constexpr const char* unreadGathering = "00000000-0000-7000-8000-00000000100c";

// The id of a new switch that comes in place of the shop's connector, with what its places serve.
inline constexpr const char* freshGathering = "00000000-0000-7000-8000-00000000100d";

// The id of a round on that job's machine that was begun, every check of it open.
inline constexpr const char* begunRound = "00000000-0000-7000-8000-00000000100e";

// A session on the shop in that folder, ready; with the job open unless 'job' is empty.
[[nodiscard]] std::unique_ptr<ui::ShopSession> sessionOn(const std::filesystem::path& folder,
                                                         const job::Id& job);

} // namespace undercowl::looks
