// The device's own voice, through Qt TextToSpeech: flite on Linux, the phone's elsewhere. Needs no network.
#pragma once

#include "platform/speaker/speaker.h"

#include <memory>

class QTextToSpeech;

namespace undercowl::platform {

class SystemVoice : public Speaker {
    Q_OBJECT

public:
    explicit SystemVoice(QObject* parent = nullptr);
    ~SystemVoice() override;

    void say(const QString& sentence, double slowness) override;
    void stop() override;

private:
    void open();

    std::unique_ptr<QTextToSpeech> voice_;
};

} // namespace undercowl::platform
