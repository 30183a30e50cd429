// What somebody says, cut out of a sound that never ends: hands-free, nobody holds a button.
#pragma once

#include "platform/ear/sound.h"

#include <cstddef>
#include <span>
#include <vector>

namespace undercowl::platform {

// An utterance begins where it is clearly louder than the place, and ends with a pause; what comes shortly
// before it and after it is given with it. How loud the place is follows the quietest that was heard lately,
// so that a compressor that starts is speech for a moment only.
class Utterances {
public:
    // The next samples at earRate, in any portions. The utterances that end in them, at most longestSeconds
    // each.
    [[nodiscard]] std::vector<Samples> take(std::span<const float> samples);

    // Somebody may be speaking just now.
    [[nodiscard]] bool speaking() const { return speaking_; }

    void forget(); // what was heard so far is no part of what comes

private:
    [[nodiscard]] bool loud(double framePower);

    Samples waiting_;              // less than a frame
    Samples sound_;                // of the utterance, or what may come before one
    std::vector<double> quietest_; // powers, a quarter of a second each
    double power_{};               // of late, smoothed
    double quarter_{};
    int inQuarter_{};
    int loudFrames_{};
    int quietFrames_{};
    bool speaking_{};
};

} // namespace undercowl::platform
