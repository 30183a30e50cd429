#include "core/sight/photo.h"

#include "core/sight/decode.h"
#include "core/sight/pixels.h"

#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <array>
#include <fstream>
#include <system_error>
#include <vector>

namespace undercowl::sight {
namespace {

bool startsWith(std::span<const std::byte> bytes, std::span<const unsigned char> magic) {
    return bytes.size() >= magic.size() &&
           std::equal(magic.begin(), magic.end(), bytes.begin(),
                      [](unsigned char a, std::byte b) { return std::byte{a} == b; });
}

// Exif 2.32: how the stored picture must be turned to stand upright.
cv::Mat turned(const cv::Mat& stored, int orientation) {
    cv::Mat out = stored;
    if (orientation >= 5) { // 5 to 8 have rows and columns exchanged
        cv::Mat exchanged;
        cv::transpose(out, exchanged);
        out = exchanged;
    }
    // After the exchange: what is left is a mirror of columns (+1), of rows (0) or both (-1).
    constexpr int leave = 2;
    static constexpr std::array<int, 9> flips{leave, leave, 1, -1, 0, leave, 1, -1, 0};
    const int flip = flips.at(static_cast<std::size_t>(orientation));
    if (flip != leave) {
        cv::Mat mirrored;
        cv::flip(out, mirrored, flip);
        out = mirrored;
    }
    return out;
}

PhotoProblem naming(PhotoProblem problem, const std::filesystem::path& file) {
    problem.message = file.string() + ": " + problem.message;
    return problem;
}

} // namespace

bool isJpeg(std::span<const std::byte> head) {
    static constexpr std::array<unsigned char, 3> magic{0xFF, 0xD8, 0xFF};
    return startsWith(head, magic);
}

bool isPng(std::span<const std::byte> head) {
    static constexpr std::array<unsigned char, 8> magic{0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    return startsWith(head, magic);
}

PhotoProblem tooLarge(int width, int height) {
    return {PhotoFault::TooLarge, "the photo has " + std::to_string(width) + " x " + std::to_string(height) +
                                      " pixels, more than 120 megapixels: save it smaller"};
}

cv::Mat toWorkingSize(const cv::Mat& rgb) {
    const int longer = std::max(rgb.cols, rgb.rows);
    if (longer <= workingSide)
        return rgb;
    const double factor = double(workingSide) / longer;
    cv::Mat smaller;
    cv::resize(rgb, smaller,
               {std::max(1, cvRound(rgb.cols * factor)), std::max(1, cvRound(rgb.rows * factor))}, 0, 0,
               cv::INTER_AREA);
    return smaller;
}

tl::expected<Photo, PhotoProblem> Photo::decode(std::span<const std::byte> bytes) {
    if (!isJpeg(bytes) && !isPng(bytes))
        return tl::unexpected(
            PhotoProblem{PhotoFault::NotAPhoto, "this is neither a JPEG nor a PNG: choose a photo"});
    auto decoded = isJpeg(bytes) ? decodeJpeg(bytes) : decodePng(bytes);
    if (!decoded)
        return tl::unexpected(std::move(decoded.error()));
    auto pixels = std::make_shared<Pixels>();
    pixels->rgb = turned(decoded->rgb, decoded->orientation);
    const bool exchanged = decoded->orientation >= 5;
    pixels->width = exchanged ? decoded->height : decoded->width;
    pixels->height = exchanged ? decoded->width : decoded->height;
    pixels->scale =
        double(std::max(pixels->rgb.cols, pixels->rgb.rows)) / std::max(pixels->width, pixels->height);
    return Photo(std::move(pixels));
}

tl::expected<Photo, PhotoProblem> Photo::read(const std::filesystem::path& file) {
    const auto unreadable = [&](const char* why) {
        return tl::unexpected(naming({PhotoFault::NotFound, why}, file));
    };
    std::error_code failed;
    if (!std::filesystem::is_regular_file(file, failed))
        return unreadable("there is no such file: check the name");
    const auto size = std::filesystem::file_size(file, failed);
    constexpr std::uintmax_t largestFile = 300U << 20U;
    if (failed || size > largestFile)
        return tl::unexpected(
            naming({PhotoFault::TooLarge, "the file is larger than 300 MB: save it smaller"}, file));
    std::ifstream in(file, std::ios::binary);
    std::vector<std::byte> bytes(static_cast<std::size_t>(size));
    if (!in.read(reinterpret_cast<char*>(bytes.data()), static_cast<std::streamsize>(size)))
        return unreadable("the file may not be read: check its permissions");
    auto photo = decode(bytes);
    if (!photo)
        return tl::unexpected(naming(std::move(photo.error()), file));
    return photo;
}

int Photo::width() const {
    return pixels_->width;
}

int Photo::height() const {
    return pixels_->height;
}

} // namespace undercowl::sight
