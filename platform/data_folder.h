// Where the shop's store lies when nobody says otherwise, unless another one beside it was chosen
// (core/store/shops.h).
#pragma once

#include <filesystem>

namespace undercowl::platform {

// The folder for the store of this user on this device; it need not exist yet. Empty when the system names no
// home for this user.
[[nodiscard]] std::filesystem::path dataFolder();

} // namespace undercowl::platform
