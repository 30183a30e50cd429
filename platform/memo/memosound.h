// A memo's sound as it lies in its file.
#pragma once

#include <QList>
#include <QString>

#include <vector>

namespace undercowl::platform {

struct MemoSound {
    std::vector<short> samples; // one channel
    int rate{};

    [[nodiscard]] int milliseconds() const {
        return rate == 0 ? 0 : static_cast<int>(static_cast<long long>(samples.size()) * 1000 / rate);
    }
};

// Any sound file of at most half an hour; several channels are averaged. Without samples where it cannot be
// read. A file whose end is missing gives what is there.
[[nodiscard]] MemoSound readMemo(const QString& file);

// Levels of up to 'parts' stretches of equal length.
[[nodiscard]] QList<qreal> outlineOf(const MemoSound& sound, int parts);

} // namespace undercowl::platform
