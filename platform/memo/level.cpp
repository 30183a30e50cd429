#include "platform/memo/level.h"

#include <algorithm>
#include <cmath>

namespace undercowl::platform {

namespace {

constexpr double quietestDb = -60;
constexpr double fullScale = 32768;
// Speech stands out of the place's noise by this share of the meter, hence 9 dB.
constexpr double above = 0.15;
constexpr double leastSpeech = 0.2; // -48 dB: quieter is a room's hum, however quiet the room was before
constexpr int settlingMs = 300;     // the first sounds are the thumb's

} // namespace

double level(std::span<const short> samples) {
    if (samples.empty())
        return 0;
    double sum = 0;
    for (const short sample : samples)
        sum += static_cast<double>(sample) * sample;
    const double root = std::sqrt(sum / static_cast<double>(samples.size())) / fullScale;
    if (root <= 0)
        return 0;
    return std::clamp(1 - 20 * std::log10(root) / quietestDb, 0.0, 1.0);
}

bool SilenceWatch::over(double level, int milliseconds) {
    heard_ += milliseconds;
    if (heard_ <= settlingMs)
        return false;
    floor_ = std::min(floor_, level);
    if (level > std::max(floor_ + above, leastSpeech)) {
        spoken_ = true;
        quiet_ = 0;
        return false;
    }
    quiet_ += milliseconds;
    return spoken_ && quiet_ >= patience_;
}

} // namespace undercowl::platform
