#include "platform/level/level.h"

#include <cmath>
#include <numbers>

namespace undercowl::platform {

void Level::tell(std::optional<double> tilt) {
    if (tilt_ == tilt)
        return;
    tilt_ = tilt;
    emit changed();
}

std::optional<double> tiltOf(double x, double y, double z) {
    const double inPlane = std::hypot(x, y);
    constexpr double sineOfFlat = 0.5;
    if (!std::isfinite(inPlane) || !std::isfinite(z) || inPlane <= sineOfFlat * std::hypot(inPlane, z))
        return std::nullopt;
    // At rest an accelerometer shows what holds the device up: y upright, x with the right side up, which is
    // a quarter turn against the clock.
    const double turned = -std::atan2(x, y) * 180 / std::numbers::pi;
    return turned - 90 * std::round(turned / 90);
}

} // namespace undercowl::platform
