#include "core/sight/exif.h"
#include "core/sight/metadata.h"

#include <catch2/catch.hpp>

#include <string>
#include <string_view>

using namespace undercowl::sight;

namespace {

std::span<const std::byte> bytes(std::string_view text) {
    return std::as_bytes(std::span(text));
}

std::string text(const std::vector<std::byte>& bytes) {
    return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
}

std::string segment(char marker, const std::string& body) {
    const std::size_t length = body.size() + 2;
    return std::string("\xFF") + marker + static_cast<char>(length >> 8U) +
           static_cast<char>(length & 0xFFU) + body;
}

std::string chunk(const std::string& type, const std::string& data) {
    std::string length(4, '\0');
    length[3] = static_cast<char>(data.size());
    return length + type + data + "crc."; // checksums are handed on as they are
}

// Exif with an orientation and, as phones write it, a pointer to a directory with the place (tag 0x8825).
std::string exif(char orientation) {
    std::string tiff("MM\0*\0\0\0\x08\0\x02\x01\x12\0\x03\0\0\0\x01\0", 19);
    tiff +=
        orientation + std::string("\0\0\x88\x25\0\x04\0\0\0\x01\0\0\0\x26\0\0\0\0", 18) + "N 52 31 E 13 24";
    return std::string("Exif\0\0", 6) + tiff;
}

} // namespace

TEST_CASE("a JPEG loses what tells the place and keeps its picture and its way up") {
    const std::string start("\xFF\xD8", 2);
    const std::string jfif = segment('\xE0', std::string("JFIF\0\x01\x01\0\0\x01\0\x01\0\0", 14));
    const std::string picture = segment('\xDB', std::string(65, '\x10')) + segment('\xDA', "scan header") +
                                std::string("entropy \xFF\x00 coded \xFF\xD0 data\xFF\xD9", 26);
    const std::string plain = start + jfif + picture;
    CHECK_FALSE(withoutLocation(bytes(plain)));

    for (char orientation = 1; orientation <= 8; ++orientation) {
        const std::string tells = start + jfif + segment('\xE1', exif(orientation)) +
                                  segment('\xE1', "http://ns.adobe.com/xap/1.0/ GPSLatitude") +
                                  segment('\xED', "Photoshop City") + segment('\xFE', "taken in Mill Lane") +
                                  picture + "a film with its own place";
        REQUIRE(jpegOrientation(bytes(tells)) == orientation);
        const auto without = withoutLocation(bytes(tells));
        REQUIRE(without);
        for (const char* word : {"52 31", "GPS", "City", "Mill Lane", "film"}) {
            CHECK(text(*without).find(word) == std::string::npos);
        }
        CHECK(jpegOrientation(*without) == orientation);
        CHECK(text(*without).ends_with(jfif + picture));
        if (orientation == 1) {
            CHECK(text(*without) == plain);
        }
        CHECK_FALSE(withoutLocation(*without));
    }
}

TEST_CASE("a PNG loses its texts, its Exif and its time, and keeps the rest") {
    const std::string head = "\x89PNG\r\n\x1A\n" + chunk("IHDR", std::string(13, '\1'));
    const std::string tail = chunk("IDAT", "picture") + chunk("IEND", "");
    CHECK_FALSE(withoutLocation(bytes(head + tail)));
    const auto without =
        withoutLocation(bytes(head + chunk("eXIf", exif(6).substr(6)) + chunk("tEXt", "Place Mill Lane") +
                              chunk("tIME", "2026") + tail + "more"));
    REQUIRE(without);
    CHECK(text(*without) == head + tail);
}

TEST_CASE("what is damaged or no photo is left alone") {
    for (const std::string& file :
         {std::string(), std::string("no photo"), std::string("\xFF\xD8\xFF\xE1\xFF\xFF", 6),
          std::string("\x89PNG\r\n\x1A\n\xFF\xFF\xFF\xFFIHDR", 16)}) {
        CHECK_FALSE(withoutLocation(bytes(file)));
    }
}
