#include "core/store/shops.h"

#include "core/store/backupfile.h"
#include "core/store/database.h"
#include "core/store/stream.h"

#include <algorithm>
#include <string_view>

namespace undercowl::store {
namespace {

using std::filesystem::path;

constexpr std::string_view between = "-shop-";
constexpr std::string_view unfinished = ".incoming-";
constexpr std::size_t longestName = 255;
constexpr int busyMs = 2'000;

// Absolute and without a slash at its end.
path plain(const path& folder) {
    std::error_code error;
    path full = std::filesystem::absolute(folder, error).lexically_normal();
    return full.has_filename() ? full : full.parent_path();
}

path choiceOf(const path& home) {
    return home.string() + ".current";
}

// HOME's own name, or the name of a shop that was brought back: nothing that leads elsewhere has this shape.
bool isShopName(const path& home, std::string_view name) {
    const std::string first = home.filename().string();
    if (name == first) {
        return true;
    }
    if (!name.starts_with(first + std::string(between))) {
        return false;
    }
    name.remove_prefix(first.size() + between.size());
    return name.size() == stampOf(0).size() &&
           name.find_first_not_of("0123456789TZ.") == std::string_view::npos;
}

// A folder itself, not a link to one.
bool isFolder(const path& folder) {
    std::error_code error;
    return std::filesystem::is_directory(std::filesystem::symlink_status(folder, error));
}

bool isShopOf(const path& home, const path& folder) {
    return folder.parent_path() == home.parent_path() && isShopName(home, folder.filename().string()) &&
           isFolder(folder);
}

std::uint64_t bytesIn(const path& folder) {
    std::uint64_t bytes = 0;
    std::error_code error;
    for (std::filesystem::recursive_directory_iterator at(folder, error), end; !error && at != end;
         at.increment(error)) {
        std::error_code unknown;
        if (at->is_regular_file(unknown) && !at->is_symlink(unknown)) {
            const auto size = at->file_size(unknown);
            bytes += unknown ? 0 : size;
        }
    }
    return bytes;
}

// The name that was chosen; empty where there is none, or none that can be one.
std::string chosenName(const path& home, Files& files) {
    const auto size = files.size(choiceOf(home));
    if (!size || size->value_or(0) < 2 || size->value_or(0) > longestName + 1) {
        return {};
    }
    std::string name;
    const auto read =
        files.read(choiceOf(home), [&](std::span<const std::byte> piece) { name += text(piece); });
    if (!read || !name.ends_with('\n')) {
        return {};
    }
    name.pop_back();
    return isShopName(home, name) ? name : std::string{};
}

// Nothing for a folder in which nothing was ever said.
std::optional<ShopBeside> lookAt(const path& folder) {
    std::error_code error;
    const path file = folder / "shop.db";
    ShopBeside shop{folder, 0, 0, false, 0};
    const auto bytes = std::filesystem::file_size(file, error);
    if (error || bytes == 0) {
        const bool lost = std::filesystem::exists(folder / "media", error) &&
                          !std::filesystem::is_empty(folder / "media", error);
        return lost || !rollingBackups(folder).empty() ? std::optional(shop) : std::nullopt;
    }
    bool begun = true;
    const auto looked = guarded([&]() -> Result<void> {
        SQLite::Database database(file.string(), SQLite::OPEN_READONLY, busyMs);
        begun = database.execAndGet("SELECT EXISTS (SELECT 1 FROM entry)").getInt() != 0;
        shop.jobs = static_cast<std::size_t>(database.execAndGet("SELECT count(*) FROM job_line").getInt64());
        shop.lastAt = database.execAndGet("SELECT coalesce(max(last_at), 0) FROM job_line").getInt64();
        shop.readable = true;
        return {};
    });
    return !looked || begun ? std::optional(shop) : std::nullopt;
}

} // namespace

path currentShop(const path& homeGiven, const std::shared_ptr<Files>& files) {
    if (homeGiven.empty()) {
        return {};
    }
    const path home = plain(homeGiven);
    const std::string name = chosenName(home, *files);
    const path chosen = home.parent_path() / name;
    return !name.empty() && isFolder(chosen) ? chosen : homeGiven;
}

Result<void> chooseShop(const path& homeGiven, const path& folderGiven, const std::shared_ptr<Files>& files) {
    const path home = plain(homeGiven);
    const path folder = plain(folderGiven);
    if (!isShopOf(home, folder)) {
        return failed(Fault::Refused, folder.string() + " is no shop of " + home.string());
    }
    const std::string name = folder.filename().string() + "\n";
    FileSink choice(choiceOf(home), files);
    auto put = choice.put(std::as_bytes(std::span(name)));
    return put ? choice.end() : put;
}

path newShopFolder(const path& homeGiven, job::TimeMs now) {
    const path home = plain(homeGiven);
    const auto at = [&](job::TimeMs time) -> path {
        return home.string() + std::string(between) + stampOf(time);
    };
    std::error_code error;
    while (std::filesystem::exists(std::filesystem::symlink_status(at(now), error))) {
        ++now;
    }
    return at(now);
}

std::vector<ShopBeside> shopsBeside(const path& homeGiven) {
    const path home = plain(homeGiven);
    std::vector<ShopBeside> shops;
    std::error_code error;
    for (std::filesystem::directory_iterator at(home.parent_path(), error), end; !error && at != end;
         at.increment(error)) {
        if (isShopName(home, at->path().filename().string()) && isFolder(at->path())) {
            if (auto shop = lookAt(at->path())) {
                shop->bytes = bytesIn(at->path());
                shops.push_back(std::move(*shop));
            }
        }
    }
    std::ranges::sort(shops, [](const ShopBeside& a, const ShopBeside& b) {
        return std::pair(a.lastAt, a.folder) > std::pair(b.lastAt, b.folder);
    });
    return shops;
}

Result<void> removeShop(const path& homeGiven, const path& folderGiven, const std::shared_ptr<Files>& files) {
    const path home = plain(homeGiven);
    const path folder = plain(folderGiven);
    if (!isShopOf(home, folder)) {
        return failed(Fault::Refused, folder.string() + " is no shop of " + home.string());
    }
    if (plain(currentShop(home, files)) == folder) {
        return failed(Fault::Refused, folder.string() + " is the current shop: go on with another one first");
    }
    clearCutOff(home);
    const path gone = newShopFolder(home, 0).string() + std::string(unfinished) + "removed";
    auto renamed = files->rename(folder, gone);
    if (renamed) {
        renamed = files->syncFolder(home.parent_path());
    }
    if (!renamed) {
        return renamed;
    }
    std::error_code error;
    std::filesystem::remove_all(gone, error);
    return error ? failed(Fault::InputOutput, gone.string() + " could not be removed: " + error.message())
                 : Result<void>{};
}

void clearCutOff(const path& homeGiven) {
    const path home = plain(homeGiven);
    std::vector<path> left;
    std::error_code error;
    for (std::filesystem::directory_iterator at(home.parent_path(), error), end; !error && at != end;
         at.increment(error)) {
        const std::string name = at->path().filename().string();
        const std::string shop = name.substr(0, name.find(unfinished));
        if (shop != name && shop != home.filename() && isShopName(home, shop)) {
            left.push_back(at->path());
        }
    }
    for (const path& one : left) {
        std::filesystem::remove_all(one, error);
    }
}

} // namespace undercowl::store
