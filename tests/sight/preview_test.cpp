// What is said of a picture while it is aimed. The pictures are made here, or those of tests/photos.
#include "core/sight/pixels.h"
#include "core/sight/preview.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <opencv2/imgproc.hpp>

#include <cmath>
#include <fstream>
#include <string>

using namespace undercowl::sight;

namespace {

constexpr int longest = 1024;

cv::Mat photo(const std::string& file) {
    const auto read = Photo::read(std::string(UNDERCOWL_TESTS "/photos/") + file);
    REQUIRE(read);
    cv::Mat small;
    const cv::Mat& rgb = read->pixels().rgb;
    const double scale = static_cast<double>(longest) / std::max(rgb.cols, rgb.rows);
    cv::resize(rgb, small, {}, scale, scale, cv::INTER_AREA);
    return small;
}

Preview previewOf(const cv::Mat& rgb) {
    REQUIRE(rgb.isContinuous());
    return {{rgb.data, rgb.total() * 3}, rgb.cols, rgb.rows};
}

cv::Mat blurred(const cv::Mat& rgb, double sigma) {
    cv::Mat soft;
    cv::GaussianBlur(rgb, soft, {}, sigma);
    return soft;
}

double sharpnessOf(const cv::Mat& rgb) {
    const auto sharp = sharpness(middleOf(greyOf(previewOf(rgb), longest)));
    REQUIRE(sharp);
    return *sharp;
}

cv::Mat shifted(const cv::Mat& rgb, double right, double down) {
    cv::Mat moved;
    const cv::Mat by = (cv::Mat_<double>(2, 3) << 1, 0, right, 0, 1, down);
    cv::warpAffine(rgb, moved, by, rgb.size(), cv::INTER_LINEAR, cv::BORDER_REPLICATE);
    return moved;
}

double movedBetween(const cv::Mat& before, const cv::Mat& now) {
    constexpr int small = 160;
    return moved(greyOf(previewOf(before), small), greyOf(previewOf(now), small));
}

// What a sensor adds, about 'level' of 255, never the same twice.
cv::Mat noisy(const cv::Mat& rgb, double level, std::uint64_t seed) {
    cv::Mat noise(rgb.size(), CV_16SC3);
    cv::RNG(seed).fill(noise, cv::RNG::NORMAL, 0.0, level);
    cv::Mat with;
    rgb.convertTo(with, CV_16SC3);
    with += noise;
    cv::Mat eight;
    with.convertTo(eight, CV_8UC3);
    return eight;
}

nlohmann::json truth() {
    std::ifstream in(UNDERCOWL_TESTS "/photos/truth.json");
    return nlohmann::json::parse(in);
}

cv::Mat flat(const cv::Scalar& colour) {
    return {360, 480, CV_8UC3, colour};
}

} // namespace

TEST_CASE("a blurred photo is told from a sharp one, whatever is on it") {
    for (const auto& each : truth()) {
        const std::string file = each["file"];
        INFO(file);
        const cv::Mat sharp = photo(file);
        double last = sharpnessOf(sharp);
        CHECK(last > sharpEnough);
        for (const double sigma : {1.0, 2.0, 3.0}) {
            const double soft = sharpnessOf(blurred(sharp, sigma));
            CHECK((soft < last ||
                   last < sharpEnough)); // where nothing has an edge any more, little is left to compare
            last = soft;
        }
        CHECK(last < sharpEnough);
    }
}

TEST_CASE("movement in one direction counts as blur") {
    const cv::Mat sharp = photo("s02.jpg");
    cv::Mat smeared;
    cv::blur(sharp, smeared, {9, 1}); // edges along the movement stay sharp
    CHECK(sharpnessOf(smeared) < 0.6 * sharpnessOf(sharp));
}

TEST_CASE("little noise does not pass for sharpness") {
    const cv::Mat soft = blurred(photo("s02.jpg"), 3);
    CHECK(sharpnessOf(noisy(soft, 3, 1)) < sharpEnough);
}

TEST_CASE("nothing is said of the sharpness of a bare surface") {
    CHECK_FALSE(sharpness(greyOf(previewOf(flat({120, 120, 120})), longest)));
    CHECK_FALSE(sharpness(Grey{}));
}

TEST_CASE("a hand that moves is told from one that holds still") {
    const cv::Mat still = photo("s18.jpg");
    const double width = still.cols;
    CHECK(movedBetween(still, still) == 0.0);
    const double trembling = movedBetween(noisy(still, 6, 1), noisy(still, 6, 2));
    CHECK(trembling < 0.002);
    for (const double part : {0.005, 0.01, 0.02}) {
        INFO(part);
        for (const double degrees : {0.0, 45.0, 90.0, 200.0}) {
            const double angle = degrees * 3.14159265 / 180;
            const double seen = movedBetween(
                still, shifted(still, part * width * std::cos(angle), part * width * std::sin(angle)));
            CHECK(seen > 0.5 * part);
            CHECK(seen < 2 * part);
        }
    }
    CHECK(movedBetween(still, shifted(still, 0.1 * width, 0)) > 0.02);
}

TEST_CASE("exposure that settles is no movement") {
    const cv::Mat still = photo("s18.jpg");
    const cv::Mat darker = still * 0.8;
    CHECK(movedBetween(still, darker) < 0.003);
    CHECK(movedBetween(flat({90, 90, 90}), flat({140, 140, 140})) == 0.0);
    CHECK(moved(Grey{}, Grey{}) == 0.0);
}

TEST_CASE("a white card is seen under every lamp of the photos") {
    int cards = 0;
    for (const auto& each : truth()) {
        if (each["reference_card"].is_null() || each["reference_card"]["reflectance"] < 0.8)
            continue;
        INFO(each["file"]);
        CHECK(whiteInView(previewOf(photo(each["file"]))));
        ++cards;
    }
    CHECK(cards >= 1);
}

TEST_CASE("colours and dark things are no white") {
    CHECK_FALSE(whiteInView(previewOf(photo("y24.jpg")))); // red ground, black housing, tungsten
    for (const cv::Scalar& colour : {cv::Scalar(200, 30, 30), cv::Scalar(230, 200, 40),
                                     cv::Scalar(40, 120, 220), cv::Scalar(12, 12, 12)}) {
        INFO(colour[0] << ' ' << colour[1] << ' ' << colour[2]);
        cv::Mat scene = flat(colour);
        CHECK_FALSE(whiteInView(previewOf(scene)));
        // Paper laid beside, as a lamp of 2850 K leaves it in a picture that was half balanced.
        cv::rectangle(scene, {20, 20, 90, 70}, cv::Scalar(240, 225, 200), cv::FILLED);
        CHECK(whiteInView(previewOf(scene)));
    }
    CHECK_FALSE(whiteInView(Preview{}));
}
