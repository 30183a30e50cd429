#pragma once

#include "platform/speaker/devicespeaker.h"

#include <QObject>

namespace undercowl::platform {

class SpeakerPlugin : public QObject, public SpeakerMaker {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID "undercowl.speaker")
    Q_INTERFACES(undercowl::platform::SpeakerMaker)

public:
    [[nodiscard]] std::unique_ptr<Speaker> systemVoice() const override;
};

} // namespace undercowl::platform
