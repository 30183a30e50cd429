// The shops that lie beside one another on this device, and which of them is opened when nobody names one.
//
//   HOME                              the first: the data folder of this user, or the folder that was named
//   HOME-shop-20261126T071500.123Z    one that was brought back from a backup, never over what exists
//   HOME.current                      the plain name of the current one and a line feed; without it HOME is
//   it
//
// The choice is written beside, synced and renamed: a cut at any moment leaves the one or the other current.
#pragma once

#include "core/store/files.h"
#include "core/store/store.h"

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <vector>

namespace undercowl::store {

// The folder of the shop to be opened. It is HOME itself when no other was chosen, and also when the file
// that says so is damaged, holds anything but the plain name of one of HOME's shops, or names one that has
// gone. An empty HOME gives an empty answer.
[[nodiscard]] std::filesystem::path currentShop(const std::filesystem::path& home,
                                                const std::shared_ptr<Files>& files = posixFiles());

// From now on the shop in that folder is the current one. Refused for a folder that is none of HOME's shops.
// When it fails the choice is the one or the other.
Result<void> chooseShop(const std::filesystem::path& home, const std::filesystem::path& folder,
                        const std::shared_ptr<Files>& files = posixFiles());

// A folder for another shop of HOME; nothing is there yet.
[[nodiscard]] std::filesystem::path newShopFolder(const std::filesystem::path& home, job::TimeMs now);

struct ShopBeside {
    std::filesystem::path folder;
    job::TimeMs lastAt{}; // of its jobs; 0 without any
    std::size_t jobs{};
    bool readable{};       // false: its database is damaged or gone, and what else is known is not
    std::uint64_t bytes{}; // of its files, photos and memos among them
};

// Every shop of HOME in which something was said, the last worked on first. They are looked at, not opened.
[[nodiscard]] std::vector<ShopBeside> shopsBeside(const std::filesystem::path& home);

// Removes a shop for good, with its photos and memos. First it is renamed to what clearCutOff() removes: a
// cut leaves it whole or gone. Refused for the current one and for a folder that is none of HOME's shops.
// When it fails after the renaming, the shop is gone and what is left of it goes at the next clearing.
Result<void> removeShop(const std::filesystem::path& home, const std::filesystem::path& folder,
                        const std::shared_ptr<Files>& files = posixFiles());

// Removes what a restoring or a removing that was cut off left behind: folders that are no shop, or no more.
// Not while another one is under way.
void clearCutOff(const std::filesystem::path& home);

} // namespace undercowl::store
