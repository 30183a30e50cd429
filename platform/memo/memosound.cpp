#include "platform/memo/memosound.h"

#include "platform/memo/level.h"

#include <sndfile.h>

#include <algorithm>
#include <numeric>
#include <span>

namespace undercowl::platform {

namespace {

constexpr sf_count_t longestSeconds = 1800;

} // namespace

MemoSound readMemo(const QString& file) {
    MemoSound sound;
    SF_INFO info{};
    SNDFILE* in = sf_open(file.toLocal8Bit().constData(), SFM_READ, &info);
    if (in == nullptr)
        return sound;
    if (info.channels >= 1 && info.channels <= 8 && info.samplerate >= 4000 && info.samplerate <= 192000) {
        const sf_count_t frames = std::min(info.frames, longestSeconds * info.samplerate);
        const auto channels = static_cast<std::size_t>(info.channels);
        std::vector<short> all(static_cast<std::size_t>(std::max<sf_count_t>(frames, 0)) * channels);
        const sf_count_t read = sf_readf_short(in, all.data(), frames);
        sound.rate = info.samplerate;
        sound.samples.resize(static_cast<std::size_t>(std::max<sf_count_t>(read, 0)));
        for (std::size_t i = 0; i < sound.samples.size(); ++i) {
            const auto first = all.begin() + static_cast<std::ptrdiff_t>(i * channels);
            sound.samples[i] =
                static_cast<short>(std::accumulate(first, first + info.channels, 0) / info.channels);
        }
    }
    sf_close(in);
    return sound;
}

QList<qreal> outlineOf(const MemoSound& sound, int parts) {
    QList<qreal> levels;
    const std::size_t count = sound.samples.size();
    const std::size_t wanted = std::min(count, static_cast<std::size_t>(std::max(parts, 0)));
    for (std::size_t i = 0; i < wanted; ++i) {
        const std::size_t from = count * i / wanted;
        const std::size_t to = count * (i + 1) / wanted;
        levels += level(std::span(sound.samples).subspan(from, to - from));
    }
    return levels;
}

} // namespace undercowl::platform
