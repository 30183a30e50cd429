#include "core/sight/exif.h"

#include <algorithm>
#include <cstdint>
#include <cstring>
#include <optional>

namespace undercowl::sight {
namespace {

class Tiff {
public:
    explicit Tiff(std::span<const std::byte> bytes) : bytes_(bytes) {
        little_ = bytes.size() >= 2 && bytes[0] == std::byte{'I'} && bytes[1] == std::byte{'I'};
        known_ = little_ || (bytes.size() >= 2 && bytes[0] == std::byte{'M'} && bytes[1] == std::byte{'M'});
    }

    [[nodiscard]] bool known() const { return known_; }

    // An unsigned number of 2 or 4 bytes; nothing beyond the end.
    [[nodiscard]] std::optional<std::uint32_t> number(std::size_t at, int size) const {
        const auto count = static_cast<std::size_t>(size);
        if (at > bytes_.size() || bytes_.size() - at < count)
            return std::nullopt;
        std::uint32_t value = 0;
        for (std::size_t i = 0; i < count; ++i) {
            const std::size_t from = little_ ? at + count - 1 - i : at + i;
            value = value << 8U | std::to_integer<std::uint32_t>(bytes_[from]);
        }
        return value;
    }

private:
    std::span<const std::byte> bytes_;
    bool little_{};
    bool known_{};
};

constexpr std::uint32_t orientationTag = 0x0112;

} // namespace

int exifOrientation(std::span<const std::byte> block) {
    const Tiff tiff(block);
    if (!tiff.known())
        return 1;
    const auto directory = tiff.number(4, 4);
    const auto entries = directory ? tiff.number(*directory, 2) : std::nullopt;
    for (std::uint32_t i = 0; entries && i < *entries; ++i) {
        const std::size_t entry = std::size_t{*directory} + 2 + std::size_t{12} * i;
        const auto tag = tiff.number(entry, 2);
        if (!tag)
            break;
        if (*tag != orientationTag)
            continue;
        const auto value = tiff.number(entry + 8, 2);
        return value && *value >= 1 && *value <= 8 ? static_cast<int>(*value) : 1;
    }
    return 1;
}

int jpegOrientation(std::span<const std::byte> file) {
    static constexpr char mark[] = "Exif\0"; // with the closing NUL these are the six bytes of the standard
    std::size_t at = 2;
    while (at + 4 <= file.size() && file[at] == std::byte{0xFF}) {
        const auto marker = std::to_integer<int>(file[at + 1]);
        const std::size_t length =
            std::to_integer<std::size_t>(file[at + 2]) << 8U | std::to_integer<std::size_t>(file[at + 3]);
        if (marker == 0xDA || length < 2) // the scan begins: metadata is over
            break;
        const std::size_t end = std::min(file.size(), at + 2 + length);
        if (marker == 0xE1 && end >= at + 4 + sizeof mark &&
            std::memcmp(&file[at + 4], mark, sizeof mark) == 0)
            return exifOrientation(file.subspan(at + 4 + sizeof mark, end - (at + 4 + sizeof mark)));
        at += 2 + length;
    }
    return 1;
}

} // namespace undercowl::sight
