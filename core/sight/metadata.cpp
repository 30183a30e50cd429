#include "core/sight/metadata.h"

#include "core/sight/exif.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <cstring>
#include <string_view>

namespace undercowl::sight {
namespace {

using Bytes = std::span<const std::byte>;

std::string_view text(Bytes bytes) {
    return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
}

void append(std::vector<std::byte>& to, Bytes bytes) {
    to.insert(to.end(), bytes.begin(), bytes.end());
}

// A TIFF block with the orientation alone (Exif 2.32, tag 0x0112, a SHORT), little end first.
std::array<std::byte, 26> orientationBlock(int orientation) {
    std::array<std::byte, 26> block{};
    constexpr std::string_view head("II*\0\x08\0\0\0\x01\0\x12\x01\x03\0\x01\0\0\0", 18);
    std::memcpy(block.data(), head.data(), head.size());
    block[head.size()] = static_cast<std::byte>(orientation);
    return block;
}

// Exif that is no more than the orientation has nothing to tell.
bool isOrientationAlone(Bytes tiff) {
    const auto alone = orientationBlock(exifOrientation(tiff));
    return tiff.size() >= alone.size() - 4 && tiff.size() <= alone.size() &&
           std::equal(tiff.begin(), tiff.end(), alone.begin());
}

constexpr std::string_view exifMark("Exif\0\0", 6);

// JPEG (ITU-T T.81, annex B): segments up to the scan, and the end of the image.
std::optional<std::vector<std::byte>> jpegWithout(Bytes file) {
    std::vector<std::byte> kept;
    append(kept, file.first(2));
    bool dropped = false;
    std::size_t at = 2;
    while (at + 4 <= file.size() && file[at] == std::byte{0xFF}) {
        const auto marker = std::to_integer<int>(file[at + 1]);
        const std::size_t length =
            std::to_integer<std::size_t>(file[at + 2]) << 8U | std::to_integer<std::size_t>(file[at + 3]);
        if (length < 2 || at + 2 + length > file.size()) {
            return std::nullopt; // damaged: it is not for us to mend
        }
        if (marker == 0xDA) {
            break;
        }
        const Bytes segment = file.subspan(at, 2 + length);
        const std::string_view body = text(segment.subspan(4));
        const bool tells = marker == 0xE1 || marker == 0xED || marker == 0xFE; // Exif and XMP, IPTC, comment
        if (tells &&
            !(body.starts_with(exifMark) && isOrientationAlone(segment.subspan(4 + exifMark.size())))) {
            dropped = true;
        } else {
            append(kept, segment);
        }
        at += 2 + length;
    }
    // Within the scans FF is followed by 00 or a restart, between them by tables: FF D9 is the end alone.
    constexpr std::string_view endMark("\xFF\xD9", 2);
    const std::size_t end = text(file).find(endMark, at);
    const std::size_t stop = end == std::string_view::npos ? file.size() : end + endMark.size();
    dropped = dropped || stop < file.size();
    if (!dropped) {
        return std::nullopt;
    }
    append(kept, file.subspan(at, stop - at));
    if (const int orientation = jpegOrientation(file); orientation != 1 && jpegOrientation(kept) == 1) {
        const auto block = orientationBlock(orientation);
        const std::size_t length = 2 + exifMark.size() + block.size();
        std::vector<std::byte> segment{std::byte{0xFF}, std::byte{0xE1}, std::byte{0},
                                       static_cast<std::byte>(length)};
        append(segment, std::as_bytes(std::span(exifMark)));
        append(segment, block);
        kept.insert(kept.begin() + 2, segment.begin(), segment.end());
    }
    return kept;
}

// PNG (ISO/IEC 15948, 5.3): chunks of length, type, data and checksum. What says which way up it is stays,
// and with it its checksum.
std::optional<std::vector<std::byte>> pngWithout(Bytes file) {
    constexpr std::array<std::string_view, 5> telling{"eXIf", "tEXt", "zTXt", "iTXt", "tIME"};
    std::vector<std::byte> kept;
    append(kept, file.first(8));
    bool dropped = false;
    std::size_t at = 8;
    while (at + 12 <= file.size()) {
        std::size_t length = 0;
        for (std::size_t i = 0; i < 4; ++i) {
            length = length << 8U | std::to_integer<std::size_t>(file[at + i]);
        }
        if (length > file.size() - at - 12) {
            return std::nullopt;
        }
        const Bytes chunk = file.subspan(at, 12 + length);
        const std::string_view type = text(chunk.subspan(4, 4));
        const bool tells = std::find(telling.begin(), telling.end(), type) != telling.end();
        if (tells && !(type == "eXIf" && isOrientationAlone(chunk.subspan(8, length)))) {
            dropped = true;
        } else {
            append(kept, chunk);
        }
        at += chunk.size();
        if (type == "IEND") {
            dropped = dropped || at < file.size();
            return dropped ? std::optional(std::move(kept)) : std::nullopt;
        }
    }
    return std::nullopt;
}

} // namespace

std::optional<std::vector<std::byte>> withoutLocation(Bytes file) {
    constexpr std::string_view jpeg("\xFF\xD8", 2);
    constexpr std::string_view png("\x89PNG\r\n\x1A\n", 8);
    if (text(file).starts_with(jpeg)) {
        return jpegWithout(file);
    }
    return text(file).starts_with(png) ? pngWithout(file) : std::nullopt;
}

} // namespace undercowl::sight
