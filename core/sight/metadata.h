// What a photo's file tells besides the picture: above all where it was taken.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace undercowl::sight {

// The same photo without what could say where it was taken: Exif and its location, XMP and IPTC blocks,
// texts, and whatever was hung on behind the picture. Which way up it is stays. The picture itself is not
// touched. Nothing when there is nothing to be dropped, or when the file is neither JPEG nor PNG.
[[nodiscard]] std::optional<std::vector<std::byte>> withoutLocation(std::span<const std::byte> file);

} // namespace undercowl::sight
