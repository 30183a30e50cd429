// A photo in memory: decoded once, turned upright, never altered.
#pragma once

#include "core/sight/geometry.h"

#include <tl/expected.hpp>

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <span>
#include <string>

namespace undercowl::sight {

enum class PhotoFault : std::uint8_t {
    NotFound,    // no such file, or it may not be read
    NotAPhoto,   // neither JPEG nor PNG
    Damaged,     // cut short or corrupt
    TooLarge,    // more than 120 megapixels
    Unsupported, // a JPEG or PNG of a kind that we do not read
};

struct PhotoProblem {
    PhotoFault fault{};
    std::string message; // English, names the file and the remedy
};

// Pixels are 8-bit sRGB, interleaved RGB, rows from the top, EXIF orientation applied. Cheap to copy
// (shared), safe to read from several threads. Large photos are reduced on decoding; coordinates given to and
// coming from this library are always those of the full-size upright photo.
class Photo {
public:
    [[nodiscard]] static tl::expected<Photo, PhotoProblem> read(const std::filesystem::path& file);
    [[nodiscard]] static tl::expected<Photo, PhotoProblem> decode(std::span<const std::byte> bytes);

    [[nodiscard]] int width() const; // of the full-size upright photo, pixels
    [[nodiscard]] int height() const;

    struct Pixels; // holds the OpenCV matrix; only core/sight looks inside
    [[nodiscard]] const Pixels& pixels() const { return *pixels_; }

private:
    explicit Photo(std::shared_ptr<const Pixels> pixels) : pixels_(std::move(pixels)) {}
    std::shared_ptr<const Pixels> pixels_;
};

} // namespace undercowl::sight
