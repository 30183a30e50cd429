#include "platform/listener/utterances.h"

#include <algorithm>

namespace undercowl::platform {

namespace {

constexpr std::size_t frame = earRate / 50; // 20 ms
constexpr std::size_t before = earRate / 4;
constexpr int framesToBegin = 3;
constexpr int framesToEnd = 20; // 0.4 s: a pause between words is shorter
constexpr int framesInQuarter = 12;
constexpr std::size_t quarters = 20; // how long the place is remembered: 5 s
constexpr double above = 4;          // 6 dB
constexpr double smooth = 0.3;       // of each frame in the power that is looked at
constexpr double least = 1e-6;       // -60 dB of full scale: below is no speech, however quiet the place is
constexpr std::size_t longest = std::size_t{longestSeconds} * earRate;
constexpr std::size_t shortest = earRate * 3 / 10; // 0.3 s of sound: a click is shorter

double powerOf(std::span<const float> samples) {
    double sum = 0;
    for (const float sample : samples)
        sum += static_cast<double>(sample) * sample;
    return sum / static_cast<double>(samples.size());
}

} // namespace

bool Utterances::loud(double framePower) {
    power_ += smooth * (framePower - power_);
    const double power = power_;
    quarter_ = inQuarter_ == 0 ? power : std::min(quarter_, power);
    if (++inQuarter_ == framesInQuarter) {
        quietest_.push_back(quarter_);
        if (quietest_.size() > quarters)
            quietest_.erase(quietest_.begin());
        inQuarter_ = 0;
    }
    if (quietest_.empty())
        return false; // nothing is known of the place yet
    // The quietest stretches but for the few that are so by chance.
    std::vector<double> sorted = quietest_;
    std::sort(sorted.begin(), sorted.end());
    const double place = sorted[sorted.size() / 4];
    return power > std::max(place * above, least);
}

std::vector<Samples> Utterances::take(std::span<const float> samples) {
    std::vector<Samples> ended;
    waiting_.insert(waiting_.end(), samples.begin(), samples.end());
    std::size_t at = 0;
    for (; at + frame <= waiting_.size(); at += frame) {
        const auto piece = std::span(waiting_).subspan(at, frame);
        sound_.insert(sound_.end(), piece.begin(), piece.end());
        const bool isLoud = loud(powerOf(piece));
        loudFrames_ = isLoud ? loudFrames_ + 1 : 0;
        quietFrames_ = isLoud ? 0 : quietFrames_ + 1;
        if (!speaking_) {
            speaking_ = loudFrames_ >= framesToBegin;
            if (!speaking_ && sound_.size() > before)
                sound_.erase(sound_.begin(), sound_.end() - static_cast<std::ptrdiff_t>(before));
            continue;
        }
        if (quietFrames_ < framesToEnd && sound_.size() < longest)
            continue;
        if (sound_.size() < longest && sound_.size() >= shortest + before + frame * framesToEnd)
            ended.push_back(sound_);
        speaking_ = false;
        loudFrames_ = 0;
        sound_.clear();
    }
    waiting_.erase(waiting_.begin(), waiting_.begin() + static_cast<std::ptrdiff_t>(at));
    return ended;
}

void Utterances::forget() {
    waiting_.clear();
    sound_.clear();
    speaking_ = false;
    loudFrames_ = quietFrames_ = 0;
}

} // namespace undercowl::platform
