// The device's own voice. What makes it is loaded with the first sentence, not with the program.
#pragma once

#include "platform/speaker/speaker.h"

#include <QtPlugin>

#include <memory>

namespace undercowl::platform {

// The plugin "speaker".
class SpeakerMaker {
public:
    virtual ~SpeakerMaker() = default;
    [[nodiscard]] virtual std::unique_ptr<Speaker> systemVoice() const = 0;
};

class DeviceSpeaker : public Speaker {
    Q_OBJECT

public:
    using Speaker::Speaker;

    void say(const QString& sentence, double slowness) override; // problem() where the plugin is missing
    void stop() override;

private:
    std::unique_ptr<Speaker> voice_; // null before the first sentence
};

} // namespace undercowl::platform

Q_DECLARE_INTERFACE(undercowl::platform::SpeakerMaker, "undercowl.speaker")
