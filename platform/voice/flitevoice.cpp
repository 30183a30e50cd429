// The voice of this system: flite with the voice "slt".
#include "platform/voice/voice.h"

#include <flite/flite.h>

#include <algorithm>
#include <memory>
#include <mutex>

extern "C" cst_voice* register_cmu_us_slt(const char* folder); // of libflite_cmu_us_slt, which has no header

namespace undercowl::platform {
namespace {

constexpr double pauseSeconds = 0.45;
constexpr double fastest = 0.5;
constexpr double slowest = 3;

struct Free {
    void operator()(cst_wave* wave) const { delete_wave(wave); }
};

} // namespace

tl::expected<Speech, std::string> speak(std::span<const std::string> sentences, double pace) {
    static std::mutex oneAtATime; // flite keeps its voices in globals
    const std::lock_guard lock{oneAtATime};
    static cst_voice* const voice = [] {
        flite_init();
        return register_cmu_us_slt(nullptr);
    }();
    if (voice == nullptr)
        return tl::unexpected(std::string{"the voice cmu_us_slt of flite cannot be opened"});
    flite_feat_set_float(voice->features, "duration_stretch",
                         static_cast<float>(std::clamp(pace, fastest, slowest)));
    Speech speech;
    for (const std::string& sentence : sentences) {
        const std::unique_ptr<cst_wave, Free> wave{flite_text_to_wave(sentence.c_str(), voice)};
        if (!wave)
            return tl::unexpected("flite cannot say '" + sentence + "'");
        speech.rate = wave->sample_rate;
        speech.samples.insert(speech.samples.end(), wave->samples, wave->samples + wave->num_samples);
        speech.samples.resize(speech.samples.size() + static_cast<std::size_t>(pauseSeconds * speech.rate));
    }
    return speech;
}

} // namespace undercowl::platform
