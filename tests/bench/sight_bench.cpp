// A photo as a phone takes it, 12 megapixels: opening it, a tap, another tap and a stroke across twelve
// wires, each against decoding the same JPEG at full size with libjpeg-turbo, in the same run.
#include "core/sight/reader.h"

#include <nlohmann/json.hpp>
#include <opencv2/core.hpp>
#include <opencv2/imgproc.hpp>
#include <turbojpeg.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <span>
#include <string>
#include <vector>

namespace {

using namespace undercowl;

constexpr double megapixels = 12.0;
constexpr int rounds = 7;

[[noreturn]] void stop(const std::string& why) {
    std::fprintf(stderr, "sight_bench: %s\n", why.c_str());
    std::exit(1);
}

std::vector<unsigned char> content(const std::string& file) {
    std::ifstream in{file, std::ios::binary};
    return {std::istreambuf_iterator<char>{in}, {}};
}

cv::Mat decoded(const std::vector<unsigned char>& jpeg) {
    const tjhandle turbo = tjInitDecompress();
    int width = 0;
    int height = 0;
    int sampling = 0;
    int space = 0;
    const auto size = static_cast<unsigned long>(jpeg.size());
    if (tjDecompressHeader3(turbo, jpeg.data(), size, &width, &height, &sampling, &space) != 0)
        stop("the photo is no JPEG");
    cv::Mat image(height, width, CV_8UC3);
    if (tjDecompress2(turbo, jpeg.data(), size, image.data, width, 0, height, TJPF_RGB, 0) != 0)
        stop(tjGetErrorStr2(turbo));
    tjDestroy(turbo);
    return image;
}

std::vector<unsigned char> encoded(const cv::Mat& image) {
    const tjhandle turbo = tjInitCompress();
    unsigned char* bytes = nullptr;
    unsigned long size = 0;
    if (tjCompress2(turbo, image.data, image.cols, 0, image.rows, TJPF_RGB, &bytes, &size, TJSAMP_420, 92,
                    0) != 0)
        stop(tjGetErrorStr2(turbo));
    std::vector<unsigned char> jpeg(bytes, bytes + size);
    tjFree(bytes);
    tjDestroy(turbo);
    return jpeg;
}

double milliseconds(const auto& work) {
    const auto begin = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count();
}

double median(std::vector<double> times) {
    std::nth_element(times.begin(), times.begin() + rounds / 2, times.end());
    return times[rounds / 2];
}

// The stroke across the most wires, and the photo that it is in.
struct Stroke {
    std::string file;
    sight::Polyline along;
    std::size_t wires = 0;
};

Stroke longestStroke(const std::string& folder) {
    std::ifstream in{folder + "/truth.json"};
    Stroke longest;
    for (const auto& photo : nlohmann::json::parse(in)) {
        for (const auto& sweep : photo.at("sweeps")) {
            if (sweep.at("wires").size() <= longest.wires)
                continue;
            longest = {folder + "/" + photo.at("file").get<std::string>(), {}, sweep.at("wires").size()};
            for (const auto& point : sweep.at("polyline"))
                longest.along.push_back({point.at(0), point.at(1)});
        }
    }
    return longest;
}

} // namespace

int main() {
    Stroke stroke = longestStroke(UNDERCOWL_TESTS "/photos");
    const cv::Mat small = decoded(content(stroke.file));
    const double factor = std::sqrt(megapixels * 1e6 / double(small.total()));
    cv::Mat large;
    cv::resize(small, large, {}, factor, factor, cv::INTER_CUBIC);
    for (sight::Point& point : stroke.along)
        point = {point.x * factor, point.y * factor};
    const std::vector<unsigned char> jpeg = encoded(large);

    std::vector<double> decode;
    std::vector<double> open;
    std::vector<double> look;
    std::vector<double> tap;
    std::vector<double> again;
    std::vector<double> sweep;
    std::size_t found = 0;
    for (int i = 0; i < rounds; ++i) {
        decode.push_back(milliseconds([&] { (void)decoded(jpeg); }));
        std::optional<sight::Reader> reader;
        open.push_back(milliseconds([&] {
            auto photo = sight::Photo::decode(std::as_bytes(std::span(jpeg)));
            if (!photo)
                stop(photo.error().message);
            reader.emplace(std::move(*photo));
        }));
        look.push_back(milliseconds([&] { reader->lookOver(); }));
        const auto tapped = [&](const sight::Point& at) {
            if (!reader->tap(at))
                stop("the tap was refused");
        };
        tap.push_back(milliseconds([&] { tapped(stroke.along.front()); }));
        again.push_back(milliseconds([&] { tapped(stroke.along.back()); }));
        sweep.push_back(milliseconds([&] {
            const auto wires = reader->sweep(stroke.along);
            found = wires ? wires->size() : 0;
        }));
    }
    const double one = median(decode);
    std::printf("%d x %d, %.1f megapixels; decoding %.0f ms\n", large.cols, large.rows,
                double(large.total()) / 1e6, one);
    const auto print = [one](const char* what, const std::vector<double>& times) {
        std::printf("%-12s %5.0f ms, ratio %.2f (median of %d)\n", what, median(times), median(times) / one,
                    rounds);
    };
    print("opening", open);
    print("looking over", look);
    print("first tap", tap);
    print("second tap", again);
    print("stroke", sweep);
    std::printf("the stroke crosses %zu wires and %zu were found\n", stroke.wires, found);
    return 0;
}
