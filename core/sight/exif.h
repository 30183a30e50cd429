// The one thing that we need from a photo's metadata: which way up it was taken.
#pragma once

#include <cstddef>
#include <span>

namespace undercowl::sight {

// Orientation 1 to 8 (Exif 2.32, tag 0x0112) from a TIFF block as it stands in a JPEG's APP1 segment after
// "Exif\0\0" or in a PNG's eXIf chunk. 1 when there is none or the block is damaged: a wrong turn is worse
// than none.
[[nodiscard]] int exifOrientation(std::span<const std::byte> tiff);

// The same for a whole JPEG file.
[[nodiscard]] int jpegOrientation(std::span<const std::byte> file);

} // namespace undercowl::sight
