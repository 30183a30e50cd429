// What a Photo holds. Only core/sight includes this.
#pragma once

#include "core/sight/photo.h"

#include <opencv2/core.hpp>

namespace undercowl::sight {

struct Photo::Pixels {
    cv::Mat rgb; // CV_8UC3, upright, RGB order
    int width{}; // of the full-size upright photo
    int height{};
    double scale{}; // pixels of rgb for each pixel of the full-size photo, at most 1
};

} // namespace undercowl::sight
