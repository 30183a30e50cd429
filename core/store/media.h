// The media folder: photos and memos, each named by the hash of its content.
#pragma once

#include "core/store/files.h"

#include <filesystem>
#include <memory>
#include <span>
#include <string>
#include <string_view>

namespace undercowl::store {

inline constexpr std::string_view incomingFolder = ".incoming"; // beside the media; emptied at each opening
inline constexpr std::size_t largestMedia = std::size_t{256} << 20U; // bytes in one file

// 64 hex digits, a point and a known suffix: jpg, png or wav.
[[nodiscard]] bool isMediaName(std::string_view name);
[[nodiscard]] bool isMediaSuffix(std::string_view suffix);

class MediaFolder {
public:
    MediaFolder(std::filesystem::path folder, std::shared_ptr<Files> files);

    // Makes the folder, and beside it ".incoming", where files are written before they get their names;
    // removes what a cut left there half written. Should another process be writing one at this moment, its
    // keep() notices and writes again.
    Result<void> prepare();

    // Content in, name out. When this returns, file and name are on the medium; when it fails, nothing new is
    // in the folder but perhaps a file in ".incoming".
    Result<std::string> keep(std::span<const std::byte> bytes, std::string_view suffix,
                             const std::string& uuid);

    // The place of a file that is there. NotFound; Refused for a name that is none.
    [[nodiscard]] Result<std::filesystem::path> find(std::string_view name) const;

    // Why the file's content is not what its name says; nothing when it is.
    [[nodiscard]] std::optional<std::string> problem(const std::string& name) const;

    // All names but those with a leading point, sorted.
    [[nodiscard]] Result<std::vector<std::string>> names() const;

private:
    Result<void> writeBeside(std::span<const std::byte> bytes, const std::filesystem::path& beside);
    [[nodiscard]] bool isWhole(const std::string& name) const;

    std::filesystem::path folder_;
    std::filesystem::path incoming_;
    std::shared_ptr<Files> files_;
};

} // namespace undercowl::store
