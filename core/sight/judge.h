// From a straightened strip to a posterior over base and tracer. Only core/sight includes this.
#pragma once

#include "core/sight/reading.h"

#include <opencv2/core.hpp>

namespace undercowl::sight {

// What is believed of the light: the linear RGB that a perfect white would have in the photo.
struct Light {
    cv::Vec3d white{1.0, 1.0, 1.0};
    bool measured{}; // from a card or a confirmed wire, not guessed
};

// Fills candidates, sure and doubts.
void judge(const cv::Mat& strip, double widthPx, const Light& light, WireReading& reading);

} // namespace undercowl::sight
