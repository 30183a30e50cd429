// How loud a sound is, and when somebody has stopped speaking.
#pragma once

#include <span>

namespace undercowl::platform {

inline constexpr int memoRate = 16000; // samples a second of every memo

// Root of the mean square of 16 bit samples, as a share of what a meter shows: 0 at -60 dB of full scale and
// below, 1 at full scale. 0 for no samples.
[[nodiscard]] double level(std::span<const short> samples);

// Ends a memo by silence: after speech, once it is as quiet as the place is for 'patience'. The quietest so
// far tells how quiet that is, so that a running engine does not count as speech. Never ends before anybody
// spoke.
class SilenceWatch {
public:
    explicit SilenceWatch(int patienceMs = 3000) : patience_(patienceMs) {}

    // The level of the next stretch; true when it is time to end.
    [[nodiscard]] bool over(double level, int milliseconds);

private:
    int patience_;
    int heard_{}; // ms of all
    int quiet_{}; // ms since speech
    bool spoken_{};
    double floor_{1};
};

} // namespace undercowl::platform
