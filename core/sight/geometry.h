// Places in a photo. Pixels of the photo as it is shown: origin top left, x to the right, y down.
#pragma once

#include <vector>

namespace undercowl::sight {

struct Point {
    double x{};
    double y{};

    friend bool operator==(const Point&, const Point&) = default;
};

struct Box {
    int x{};
    int y{};
    int width{};
    int height{};
};

using Polyline = std::vector<Point>;

} // namespace undercowl::sight
