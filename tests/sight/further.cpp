#include "tests/sight/further.h"

#include "core/sight/pixels.h"
#include "tests/sight/made_photos.h"

#include <catch2/catch.hpp>

#include <opencv2/imgproc.hpp>

namespace undercowl::tests {

sight::Photo fromFurther(TruePhoto& truth, double share) {
    const auto photo = sight::Photo::read(truth.file);
    REQUIRE(photo);
    cv::Mat small;
    cv::resize(photo->pixels().rgb, small, {}, share, share, cv::INTER_AREA);
    const made::Bytes png = made::png(small.cols, small.rows, [&](int x, int y) -> made::Colour {
        const auto& pixel = small.at<cv::Vec3b>(y, x);
        return {pixel[0], pixel[1], pixel[2]};
    });
    const double factor = small.cols / truth.width;
    const auto moveAll = [factor](sight::Polyline& line) {
        for (sight::Point& p : line)
            p = {p.x * factor, p.y * factor};
    };
    for (TrueWire& wire : truth.wires) {
        wire.diameterPx *= factor;
        moveAll(wire.centreLine);
        for (TrueTap& tap : wire.taps)
            tap.at = {tap.at.x * factor, tap.at.y * factor};
    }
    for (TrueSweep& sweep : truth.sweeps)
        moveAll(sweep.along);
    truth.width = small.cols;
    truth.height = small.rows;
    truth.card.reset();
    return sight::Photo::decode(png).value();
}

} // namespace undercowl::tests
