// A recorder whose sound is what the test gives it; all else is as it ships.
#pragma once

#include "platform/memo/soundrecorder.h"

#include <span>

namespace undercowl::platform {

class GivenRecorder : public SoundRecorder {
public:
    using SoundRecorder::SoundRecorder;

    void give(std::span<const short> samples) {
        take(QByteArray(reinterpret_cast<const char*>(samples.data()),
                        static_cast<qsizetype>(samples.size_bytes())));
    }

    QString refusal; // of the microphone, which then does not open

protected:
    [[nodiscard]] QString open() override { return refusal; }
    void close() override {}
};

} // namespace undercowl::platform
