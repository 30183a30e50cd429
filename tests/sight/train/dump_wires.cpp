// Prints what the reader sees of the wire at each place given on standard input, for learning:
//   PHOTO-FILE CARD-X CARD-Y CARD-W CARD-H REFLECTANCE X Y     (a line for each place; width 0: no card)
// Answers a line each: "0" when no wire was found, else "1 centre-x centre-y width log-odds base(3) other(3)
// share rows rim spread clipped bright(3) mean(3) dark middle light has-white white(3)".
#include "core/sight/follow.h"
#include "core/sight/photo.h"
#include "core/sight/pixels.h"
#include "core/sight/ribbon.h"
#include "core/sight/strip.h"
#include "core/sight/summary.h"

#include <cstdio>
#include <iostream>
#include <string>

using namespace undercowl::sight;

namespace {

void print(const cv::Vec3d& c) {
    std::printf(" %.5g %.5g %.5g", c[0], c[1], c[2]);
}

} // namespace

int main() {
    std::string file;
    std::string opened;
    cv::Mat lab;
    cv::Mat linear;
    Surroundings around;
    double scale = 1;
    double x = 0;
    double y = 0;
    double w = 0;
    double h = 0;
    double reflectance = 0;
    Point at;
    while (std::cin >> file >> x >> y >> w >> h >> reflectance >> at.x >> at.y) {
        if (file != opened) {
            const auto photo = Photo::read(file);
            if (!photo)
                return 2;
            lab = smoothLab(photo->pixels().rgb);
            linear = toLinearLight(photo->pixels().rgb);
            scale = photo->pixels().scale;
            around = surroundingsOf(linear);
            if (w > 0) {
                const cv::Scalar mean = cv::mean(
                    linear(cv::Rect(int(x * scale), int(y * scale), int(w * scale), int(h * scale))));
                around.white = cv::Vec3d(mean[0], mean[1], mean[2]) * (1.0 / reflectance);
            }
            opened = file;
        }
        const auto tube = findTube(lab, {at.x * scale, at.y * scale});
        const auto summary = tube ? summarise(straighten(linear, *tube, 11, 0.76)) : std::nullopt;
        if (!summary) {
            std::printf("0\n");
            continue;
        }
        const Point& centre = tube->centre[tube->centre.size() / 2];
        std::printf("1 %.1f %.1f %.2f %.3f", centre.x / scale, centre.y / scale, tube->width / scale,
                    tube->strength);
        print(summary->base);
        print(summary->other);
        std::printf(" %.4f %.4f %.4f %.4f %.4f", summary->otherShare, summary->otherRows, summary->otherRim,
                    summary->otherSpread, summary->clipped);
        print(around.bright);
        print(around.mean);
        std::printf(" %.5g %.5g %.5g %d", around.dark, around.middle, around.light, around.white ? 1 : 0);
        print(around.white.value_or(cv::Vec3d{1, 1, 1}));
        std::printf("\n");
    }
    return 0;
}
