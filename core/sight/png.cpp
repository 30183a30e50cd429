#include "core/sight/decode.h"
#include "core/sight/exif.h"

#include <png.h>

#include <cstdint>
#include <cstring>
#include <string>

namespace undercowl::sight {
namespace {

// Frees whatever libpng's simplified interface holds, on every way out.
struct Image {
    png_image png{};

    Image() { png.version = PNG_IMAGE_VERSION; }
    Image(const Image&) = delete;
    Image& operator=(const Image&) = delete;
    ~Image() { png_image_free(&png); }
};

PhotoProblem damaged(const std::string& why) {
    return {PhotoFault::Damaged,
            "the PNG is damaged or cut short (" + why + "): take or copy the photo again"};
}

// Walks over the chunks (ISO/IEC 15948, 5.3), calling 'see' with type and data until it answers false. False
// when a chunk says that it is longer than what is left of the file.
bool walkChunks(std::span<const std::byte> file, const auto& see) {
    std::size_t at = 8;
    while (at + 8 <= file.size()) {
        std::size_t length = 0;
        for (std::size_t i = 0; i < 4; ++i)
            length = length << 8U | std::to_integer<std::size_t>(file[at + i]);
        if (length > file.size() - at - 8)
            return false;
        if (!see(reinterpret_cast<const char*>(&file[at + 4]), file.subspan(at + 8, length)))
            return true;
        at += 12 + length;
    }
    return true;
}

int orientationOf(std::span<const std::byte> file) {
    int orientation = 1;
    (void)walkChunks(file, [&](const char* type, std::span<const std::byte> data) {
        const bool exif = std::memcmp(type, "eXIf", 4) == 0;
        if (exif)
            orientation = exifOrientation(data);
        return !exif;
    });
    return orientation;
}

} // namespace

DecodeResult decodePng(std::span<const std::byte> file) {
    // libpng believes a chunk's length and takes that much memory: a few bytes would cost two gigabytes.
    if (!walkChunks(file, [](const char* type, std::span<const std::byte>) {
            return std::memcmp(type, "IEND", 4) != 0;
        }))
        return tl::unexpected(damaged("a part of it is longer than the file"));
    Image image;
    png_image& png = image.png;
    if (png_image_begin_read_from_memory(&png, file.data(), file.size()) == 0)
        return tl::unexpected(damaged(png.message));
    if (double(png.width) * png.height > largestMegapixels * 1e6)
        return tl::unexpected(tooLarge(static_cast<int>(png.width), static_cast<int>(png.height)));
    png.format = PNG_FORMAT_RGB; // 16 bits, grey, palettes and transparency are brought to this, over white
    const png_color white{255, 255, 255};
    cv::Mat rgb(static_cast<int>(png.height), static_cast<int>(png.width), CV_8UC3);
    if (png_image_finish_read(&png, &white, rgb.data, static_cast<png_int_32>(rgb.step), nullptr) == 0)
        return tl::unexpected(damaged(png.message));
    return Decoded{toWorkingSize(rgb), rgb.cols, rgb.rows, orientationOf(file)};
}

} // namespace undercowl::sight
