// From a straightened strip to a posterior over base and tracer. Only core/sight includes this.
#pragma once

#include "core/sight/reading.h"
#include "core/sight/summary.h"

#include <opencv2/core.hpp>

namespace undercowl::sight {

// Fills candidates, sure and doubts. 'strength' is how wire-like the tube looks, 0 to 1.
void judge(const cv::Mat& strip, double widthPx, double strength, const Surroundings& around,
           WireReading& reading);

} // namespace undercowl::sight
