#include "core/sight/decode.h"
#include "core/sight/exif.h"

#include <png.h>

#include <cstdint>
#include <cstring>

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

PhotoProblem damaged(const png_image& png) {
    return {PhotoFault::Damaged, std::string("the PNG is damaged or cut short (") + png.message +
                                     "): take or copy the photo again"};
}

int orientationOf(std::span<const std::byte> file) {
    std::size_t at = 8;
    while (at + 8 <= file.size()) {
        std::size_t length = 0;
        for (std::size_t i = 0; i < 4; ++i)
            length = length << 8U | std::to_integer<std::size_t>(file[at + i]);
        if (length > file.size() - at - 8)
            break;
        if (std::memcmp(&file[at + 4], "eXIf", 4) == 0)
            return exifOrientation(file.subspan(at + 8, length));
        at += 12 + length;
    }
    return 1;
}

} // namespace

DecodeResult decodePng(std::span<const std::byte> file) {
    Image image;
    png_image& png = image.png;
    if (png_image_begin_read_from_memory(&png, file.data(), file.size()) == 0)
        return tl::unexpected(damaged(png));
    if (double(png.width) * png.height > largestMegapixels * 1e6)
        return tl::unexpected(tooLarge(static_cast<int>(png.width), static_cast<int>(png.height)));
    png.format = PNG_FORMAT_RGB; // 16 bits, grey, palettes and transparency are brought to this, over white
    const png_color white{255, 255, 255};
    cv::Mat rgb(static_cast<int>(png.height), static_cast<int>(png.width), CV_8UC3);
    if (png_image_finish_read(&png, &white, rgb.data, static_cast<png_int_32>(rgb.step), nullptr) == 0)
        return tl::unexpected(damaged(png));
    return Decoded{toWorkingSize(rgb), rgb.cols, rgb.rows, orientationOf(file)};
}

} // namespace undercowl::sight
