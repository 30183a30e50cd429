#include "tests/sight/made_photos.h"

#include <png.h>
#include <turbojpeg.h>

#include <cstring>
#include <stdexcept>
#include <string>

namespace made {
namespace {

std::vector<std::uint8_t> painted(int width, int height, const Paint& paint) {
    std::vector<std::uint8_t> rgb;
    rgb.reserve(static_cast<std::size_t>(width) * static_cast<std::size_t>(height) * 3);
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width; ++x) {
            const Colour c = paint(x, y);
            rgb.insert(rgb.end(), {c.r, c.g, c.b});
        }
    return rgb;
}

Bytes toBytes(const void* data, std::size_t size) {
    Bytes bytes(size);
    std::memcpy(bytes.data(), data, size);
    return bytes;
}

} // namespace

Paint quarters(int width, int height) {
    return [=](int x, int y) -> Colour {
        const bool right = x >= width / 2;
        if (y < height / 2)
            return right ? Colour{0, 255, 0} : Colour{255, 0, 0};
        return right ? Colour{255, 255, 255} : Colour{0, 0, 255};
    };
}

Bytes jpeg(int width, int height, const Paint& paint, JpegKind kind) {
    std::vector<std::uint8_t> pixels = painted(width, height, paint);
    if (kind == JpegKind::Cmyk) { // without black ink, inverted as Adobe does
        std::vector<std::uint8_t> inks;
        for (std::size_t i = 0; i < pixels.size(); i += 3)
            inks.insert(inks.end(), {pixels[i], pixels[i + 1], pixels[i + 2], 255});
        pixels = inks;
    }
    tjhandle handle = tjInitCompress();
    unsigned char* out = nullptr;
    unsigned long size = 0;
    const int flags = kind == JpegKind::Progressive ? TJFLAG_PROGRESSIVE : 0;
    const int failed =
        tjCompress2(handle, pixels.data(), width, 0, height, kind == JpegKind::Cmyk ? TJPF_CMYK : TJPF_RGB,
                    &out, &size, kind == JpegKind::Grey ? TJSAMP_GRAY : TJSAMP_444, 95, flags);
    const Bytes bytes = failed == 0 ? toBytes(out, size) : Bytes{};
    tjFree(out);
    tjDestroy(handle);
    if (failed != 0)
        throw std::runtime_error("cannot make a JPEG");
    return bytes;
}

Bytes turned(const Bytes& jpeg, int orientation, bool bigEndian) {
    std::string block("Exif\0\0", 6);
    const auto put = [&](std::uint32_t value, int size) {
        for (int i = 0; i < size; ++i)
            block.push_back(
                static_cast<char>(value >> 8U * static_cast<unsigned>(bigEndian ? size - 1 - i : i)));
    };
    block += bigEndian ? "MM" : "II";
    put(42, 2);
    put(8, 4); // where the directory stands
    put(2, 2); // two entries: one to be skipped, then the orientation
    put(0x010F, 2), put(2, 2), put(1, 4), put(0, 4);
    put(0x0112, 2), put(3, 2), put(1, 4), put(static_cast<std::uint32_t>(orientation), 2), put(0, 2);
    put(0, 4);
    std::string segment{'\xFF', '\xE1'};
    const std::size_t length = block.size() + 2;
    segment.push_back(static_cast<char>(length >> 8U));
    segment.push_back(static_cast<char>(length & 0xFFU));
    segment += block;
    Bytes file(jpeg.begin(), jpeg.begin() + 2);
    const Bytes middle = toBytes(segment.data(), segment.size());
    file.insert(file.end(), middle.begin(), middle.end());
    file.insert(file.end(), jpeg.begin() + 2, jpeg.end());
    return file;
}

Bytes png(int width, int height, const Paint& paint, PngKind kind) {
    png_image image{};
    image.version = PNG_IMAGE_VERSION;
    image.width = static_cast<png_uint_32>(width);
    image.height = static_cast<png_uint_32>(height);
    const std::vector<std::uint8_t> rgb = painted(width, height, paint);
    std::vector<std::uint8_t> narrow;
    std::vector<std::uint16_t> wide;
    const void* data = rgb.data();
    image.format = PNG_FORMAT_RGB;
    if (kind == PngKind::Rgb16) { // libpng's 16-bit formats are linear light: only 0 and full are used here
        for (const std::uint8_t value : rgb)
            wide.push_back(static_cast<std::uint16_t>(value * 257));
        image.format = PNG_FORMAT_LINEAR_RGB;
        data = wide.data();
    } else if (kind == PngKind::Grey8) {
        for (std::size_t i = 0; i < rgb.size(); i += 3)
            narrow.push_back(rgb[i]);
        image.format = PNG_FORMAT_GRAY;
        data = narrow.data();
    } else if (kind == PngKind::Rgba8) {
        for (std::size_t i = 0; i < rgb.size(); i += 3)
            narrow.insert(narrow.end(), {rgb[i], rgb[i + 1], rgb[i + 2], 255});
        image.format = PNG_FORMAT_RGBA;
        data = narrow.data();
    }
    png_alloc_size_t size = 0;
    if (png_image_write_get_memory_size(image, size, 0, data, 0, nullptr) == 0)
        throw std::runtime_error("cannot make a PNG");
    Bytes bytes(size);
    if (png_image_write_to_memory(&image, bytes.data(), &size, 0, data, 0, nullptr) == 0)
        throw std::runtime_error("cannot make a PNG");
    bytes.resize(size);
    return bytes;
}

} // namespace made
