// Memos from the device's microphone, through Qt Multimedia.
#pragma once

#include "platform/memo/soundrecorder.h"

#include <memory>

class QAudioSource;
class QIODevice;

namespace undercowl::platform {

class MicrophoneRecorder : public SoundRecorder {
    Q_OBJECT

public:
    explicit MicrophoneRecorder(QObject* parent = nullptr);
    ~MicrophoneRecorder() override;

protected:
    [[nodiscard]] QString open() override;
    void close() override;

private:
    std::unique_ptr<QAudioSource> source_;
    QIODevice* device_{}; // of the source
};

} // namespace undercowl::platform
