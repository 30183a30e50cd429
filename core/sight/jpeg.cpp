#include "core/sight/decode.h"
#include "core/sight/exif.h"

#include <turbojpeg.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <memory>

namespace undercowl::sight {
namespace {

using Decompressor = std::unique_ptr<void, int (*)(tjhandle)>;

const unsigned char* bytesOf(std::span<const std::byte> file) {
    return reinterpret_cast<const unsigned char*>(file.data());
}

// Progressive files are decoded from all their coefficients, 2 bytes each, held in memory.
bool isProgressive(std::span<const std::byte> file) {
    std::size_t at = 2;
    while (at + 4 <= file.size() && file[at] == std::byte{0xFF}) {
        const auto marker = std::to_integer<int>(file[at + 1]);
        if (marker == 0xC2 || marker == 0xCA)
            return true;
        if (marker == 0xDA)
            return false;
        at += 2 +
              (std::to_integer<std::size_t>(file[at + 2]) << 8U | std::to_integer<std::size_t>(file[at + 3]));
    }
    return false;
}

double coefficientMegabytes(int width, int height, int subsampling) {
    const double chroma = subsampling == TJSAMP_GRAY                               ? 0.0
                          : subsampling == TJSAMP_420                              ? 0.5
                          : subsampling == TJSAMP_422 || subsampling == TJSAMP_440 ? 1.0
                                                                                   : 2.0;
    return 2.0 * (1.0 + chroma) * width * height / 1e6;
}

// The smallest of libjpeg's eighths that still gives the working side.
tjscalingfactor reduction(int longer) {
    for (int eighths = 1; eighths < 8; ++eighths) {
        const tjscalingfactor factor{eighths, 8};
        if (TJSCALED(longer, factor) >= workingSide && (eighths == 1 || eighths == 2 || eighths == 4))
            return factor;
    }
    return {1, 1};
}

// Adobe writes CMYK inverted: 255 is no ink.
cv::Mat fromInvertedCmyk(const cv::Mat& cmyk) {
    cv::Mat rgb(cmyk.size(), CV_8UC3);
    for (int y = 0; y < cmyk.rows; ++y) {
        const auto* in = cmyk.ptr<cv::Vec4b>(y);
        auto* out = rgb.ptr<cv::Vec3b>(y);
        for (int x = 0; x < cmyk.cols; ++x)
            for (int c = 0; c < 3; ++c)
                out[x][c] = static_cast<std::uint8_t>(in[x][c] * in[x][3] / 255);
    }
    return rgb;
}

PhotoProblem damaged(tjhandle handle) {
    return {PhotoFault::Damaged, std::string("the JPEG is damaged or cut short (") + tjGetErrorStr2(handle) +
                                     "): take or copy the photo again"};
}

} // namespace

DecodeResult decodeJpeg(std::span<const std::byte> file) {
    const Decompressor handle(tjInitDecompress(), &tjDestroy);
    if (!handle)
        return tl::unexpected(PhotoProblem{PhotoFault::Unsupported, "the JPEG decoder could not be started"});
    int width = 0;
    int height = 0;
    int subsampling = 0;
    int space = 0;
    const auto size = static_cast<unsigned long>(file.size());
    if (tjDecompressHeader3(handle.get(), bytesOf(file), size, &width, &height, &subsampling, &space) != 0)
        return tl::unexpected(damaged(handle.get()));
    if (double(width) * height > largestMegapixels * 1e6)
        return tl::unexpected(tooLarge(width, height));
    constexpr double mostCoefficients = 310.0; // keeps 100 megapixels in the usual 4:2:0 under 400 MB in all
    if (isProgressive(file) && coefficientMegabytes(width, height, subsampling) > mostCoefficients)
        return tl::unexpected(
            PhotoProblem{PhotoFault::Unsupported,
                         "a progressive JPEG this large would not fit into memory: save it smaller, or "
                         "as a baseline JPEG"});

    const tjscalingfactor factor = reduction(std::max(width, height));
    const bool inks = space == TJCS_CMYK || space == TJCS_YCCK;
    cv::Mat pixels(TJSCALED(height, factor), TJSCALED(width, factor), inks ? CV_8UC4 : CV_8UC3);
    if (tjDecompress2(handle.get(), bytesOf(file), size, pixels.data, pixels.cols,
                      static_cast<int>(pixels.step), pixels.rows, inks ? TJPF_CMYK : TJPF_RGB,
                      TJFLAG_LIMITSCANS) != 0)
        return tl::unexpected(damaged(handle.get()));
    return Decoded{toWorkingSize(inks ? fromInvertedCmyk(pixels) : pixels), width, height,
                   jpegOrientation(file)};
}

} // namespace undercowl::sight
