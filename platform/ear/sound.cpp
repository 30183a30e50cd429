#include "platform/ear/sound.h"

#include <samplerate.h>
#include <sndfile.h>

#include <algorithm>
#include <cmath>
#include <memory>

namespace undercowl::platform {
namespace {

struct Close {
    void operator()(SNDFILE* file) const { sf_close(file); }
};
using File = std::unique_ptr<SNDFILE, Close>;

constexpr int lowestRate = 4000;
constexpr int highestRate = 192000;
constexpr int mostChannels = 8;

tl::expected<Samples, std::string> atEarRate(Samples samples, int rate) {
    if (rate == earRate)
        return samples;
    const double ratio = static_cast<double>(earRate) / rate;
    Samples out(static_cast<std::size_t>(std::ceil(static_cast<double>(samples.size()) * ratio)) + 1);
    SRC_DATA data{};
    data.data_in = samples.data();
    data.input_frames = static_cast<long>(samples.size());
    data.data_out = out.data();
    data.output_frames = static_cast<long>(out.size());
    data.src_ratio = ratio;
    if (const int error = src_simple(&data, SRC_SINC_MEDIUM_QUALITY, 1); error != 0)
        return tl::unexpected(std::string{"cannot change the sampling rate: "} + src_strerror(error));
    out.resize(static_cast<std::size_t>(data.output_frames_gen));
    return out;
}

} // namespace

tl::expected<Samples, std::string> readSound(const std::filesystem::path& file) {
    const auto wrong = [&file](const std::string& what) {
        return tl::unexpected(file.string() + ": " + what);
    };
    SF_INFO info{};
    const File sound{sf_open(file.c_str(), SFM_READ, &info)};
    if (!sound)
        return wrong(std::string{sf_strerror(nullptr)} + " Give a readable sound file, such as a WAV.");
    if (info.samplerate < lowestRate || info.samplerate > highestRate)
        return wrong("its rate of " + std::to_string(info.samplerate) +
                     " samples a second is not one of speech: record with 16000.");
    if (info.channels < 1 || info.channels > mostChannels)
        return wrong(std::to_string(info.channels) + " channels are too many: record with one.");
    if (info.frames > static_cast<sf_count_t>(info.samplerate) * longestSeconds)
        return wrong("longer than " + std::to_string(longestSeconds) + " seconds: give one spoken sentence.");
    const auto channels = static_cast<std::size_t>(info.channels);
    std::vector<float> interleaved(static_cast<std::size_t>(info.frames) * channels);
    const auto frames = static_cast<std::size_t>(
        std::max<sf_count_t>(0, sf_readf_float(sound.get(), interleaved.data(), info.frames)));
    if (frames == 0)
        return wrong("holds no sound: record it again.");
    Samples mono(frames);
    for (std::size_t i = 0; i < frames; ++i) {
        float sum = 0;
        for (std::size_t c = 0; c < channels; ++c)
            sum += interleaved[i * channels + c];
        mono[i] = sum / static_cast<float>(channels);
    }
    if (!std::all_of(mono.begin(), mono.end(), [](float value) { return std::isfinite(value); }))
        return wrong("holds values that are no numbers: record it again.");
    return atEarRate(std::move(mono), info.samplerate);
}

tl::expected<void, std::string> writeSound(const std::filesystem::path& file, std::span<const short> samples,
                                           int rate) {
    SF_INFO info{};
    info.samplerate = rate;
    info.channels = 1;
    info.format = SF_FORMAT_WAV | SF_FORMAT_PCM_16;
    const File sound{sf_open(file.c_str(), SFM_WRITE, &info)};
    if (!sound)
        return tl::unexpected(file.string() + ": " + sf_strerror(nullptr));
    const auto count = static_cast<sf_count_t>(samples.size());
    if (sf_write_short(sound.get(), samples.data(), count) != count)
        return tl::unexpected(file.string() + ": " + sf_strerror(sound.get()));
    return {};
}

} // namespace undercowl::platform
