// Tones through the device's loudspeaker, by Qt Multimedia.
#pragma once

#include "platform/signals/signaller.h"

#include <QBuffer>

#include <memory>

class QAudioSink;

namespace undercowl::platform {

class LoudspeakerSignals : public Signaller {
    Q_OBJECT

public:
    explicit LoudspeakerSignals(QObject* parent = nullptr);
    ~LoudspeakerSignals() override;

    void give(Signal signal) override;

private:
    void end();

    std::unique_ptr<QAudioSink> sink_;
    QBuffer sound_;
};

} // namespace undercowl::platform
