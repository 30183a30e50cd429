#include "core/sight/photo.h"
#include "core/sight/pixels.h"
#include "tests/sight/made_photos.h"

#include <catch2/catch.hpp>

#include <cstdlib>
#include <filesystem>
#include <fstream>

using namespace undercowl::sight;

namespace {

// The quarter's name at the middle of that quarter of the upright picture.
char quarterAt(const Photo& photo, double x, double y) {
    const cv::Mat& rgb = photo.pixels().rgb;
    const auto& p = rgb.at<cv::Vec3b>(int(y * rgb.rows), int(x * rgb.cols));
    const bool r = p[0] > 128;
    const bool g = p[1] > 128;
    const bool b = p[2] > 128;
    return r && g && b ? 'w' : r ? 'r' : g ? 'g' : b ? 'b' : '?';
}

std::string layout(const Photo& photo) {
    return {quarterAt(photo, 0.25, 0.25), quarterAt(photo, 0.75, 0.25), quarterAt(photo, 0.25, 0.75),
            quarterAt(photo, 0.75, 0.75)};
}

PhotoFault faultOf(const made::Bytes& bytes) {
    const auto photo = Photo::decode(bytes);
    REQUIRE_FALSE(photo);
    CHECK(photo.error().message.size() > 20); // a remedy, not only a word
    return photo.error().fault;
}

} // namespace

TEST_CASE("A photo stands upright whichever way the phone was held") {
    // Source: Exif 2.32 (CIPA DC-008), tag 0x0112: where row 0 and column 0 of the stored picture belong.
    const made::Bytes plain = made::jpeg(96, 64, made::quarters(96, 64));
    const char* const expected[] = {"rgbw", "grwb", "wbgr", "bwrg", "rbgw", "brwg", "wgbr", "gwrb"};
    for (const bool bigEndian : {false, true})
        for (int orientation = 1; orientation <= 8; ++orientation) {
            INFO("orientation " << orientation);
            const auto photo = Photo::decode(made::turned(plain, orientation, bigEndian));
            REQUIRE(photo);
            CHECK(layout(*photo) == expected[orientation - 1]);
            CHECK(photo->width() == (orientation >= 5 ? 64 : 96));
            CHECK(photo->height() == (orientation >= 5 ? 96 : 64));
        }
}

TEST_CASE("A wrong or damaged orientation leaves the photo as it is stored") {
    const made::Bytes plain = made::jpeg(96, 64, made::quarters(96, 64));
    for (const int nonsense : {0, 9, 60000}) {
        const auto photo = Photo::decode(made::turned(plain, nonsense, false));
        REQUIRE(photo);
        CHECK(layout(*photo) == "rgbw");
    }
}

TEST_CASE("JPEGs of every common kind are read") {
    for (const auto kind : {made::JpegKind::Baseline, made::JpegKind::Progressive, made::JpegKind::Cmyk}) {
        const auto photo = Photo::decode(made::jpeg(96, 64, made::quarters(96, 64), kind));
        REQUIRE(photo);
        CHECK(layout(*photo) == "rgbw");
    }
    const auto grey = Photo::decode(made::jpeg(96, 64, made::quarters(96, 64), made::JpegKind::Grey));
    REQUIRE(grey);
    CHECK(quarterAt(*grey, 0.75, 0.75) == 'w');
}

TEST_CASE("PNGs of every common kind are read") {
    for (const auto kind : {made::PngKind::Rgb8, made::PngKind::Rgb16, made::PngKind::Rgba8}) {
        const auto photo = Photo::decode(made::png(96, 64, made::quarters(96, 64), kind));
        REQUIRE(photo);
        CHECK(layout(*photo) == "rgbw");
    }
    REQUIRE(Photo::decode(made::png(96, 64, made::quarters(96, 64), made::PngKind::Grey8)));
}

TEST_CASE("A photo cut short anywhere is refused, not half read") {
    for (const made::Bytes& whole :
         {made::jpeg(96, 64, made::quarters(96, 64)), made::png(96, 64, made::quarters(96, 64))})
        for (std::size_t share = 1; share < 10; ++share) {
            const made::Bytes cut(whole.begin(),
                                  whole.begin() + static_cast<std::ptrdiff_t>(whole.size() * share / 10));
            CHECK(faultOf(cut) == PhotoFault::Damaged);
        }
}

TEST_CASE("What is not a photo is refused with a remedy") {
    CHECK(faultOf({}) == PhotoFault::NotAPhoto);
    CHECK(faultOf(made::Bytes(4096, std::byte{'x'})) == PhotoFault::NotAPhoto);
    const auto missing = Photo::read("/nonexistent/photo.jpg");
    REQUIRE_FALSE(missing);
    CHECK(missing.error().fault == PhotoFault::NotFound);
    CHECK(missing.error().message.find("photo.jpg") != std::string::npos);
    const auto folder = Photo::read(std::filesystem::temp_directory_path());
    REQUIRE_FALSE(folder);
    CHECK(folder.error().fault == PhotoFault::NotFound);
}

TEST_CASE("A single pixel is a photo") {
    const auto photo = Photo::decode(made::png(1, 1, made::quarters(1, 1)));
    REQUIRE(photo);
    CHECK(photo->width() == 1);
    CHECK(photo->height() == 1);
}

TEST_CASE("A large photo is reduced on decoding, its size is kept") {
    const auto photo = Photo::decode(made::jpeg(4000, 3000, made::quarters(4000, 3000)));
    REQUIRE(photo);
    CHECK(photo->width() == 4000);
    CHECK(photo->height() == 3000);
    CHECK(photo->pixels().rgb.cols <= 2048);
    CHECK(photo->pixels().scale == Approx(double(photo->pixels().rgb.cols) / 4000));
    CHECK(layout(*photo) == "rgbw");
}

TEST_CASE("A header that promises more than 120 megapixels is refused before memory is taken") {
    made::Bytes file = made::jpeg(96, 64, made::quarters(96, 64));
    for (std::size_t i = 0; i + 8 < file.size(); ++i)
        if (file[i] == std::byte{0xFF} && file[i + 1] == std::byte{0xC0}) // start of frame: height, width
            for (const std::size_t at : {i + 5, i + 7})
                file[at] = std::byte{0x7F};
    CHECK(faultOf(file) == PhotoFault::TooLarge);
}
