// Lets QML name the type of the voice that it is handed.
#pragma once

#include "platform/speaker/speaker.h"

#include <QtQml/qqml.h>

namespace undercowl::ui {

struct SpeakerForeign {
    Q_GADGET
    QML_FOREIGN(undercowl::platform::Speaker)
    QML_NAMED_ELEMENT(Speaker)
    QML_UNCREATABLE("The device hands its voice to the app")
};

} // namespace undercowl::ui
