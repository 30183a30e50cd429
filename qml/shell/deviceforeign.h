// Lets QML name what the window is handed of the device: its screen, and its tones.
#pragma once

#include "platform/screen/screen.h"
#include "platform/signals/signaller.h"

#include <QtQml/qqml.h>

namespace undercowl::ui {

struct ScreenForeign {
    Q_GADGET
    QML_FOREIGN(undercowl::platform::Screen)
    QML_NAMED_ELEMENT(DeviceScreen) // Screen is Qt Quick's
    QML_UNCREATABLE("The device hands its screen to the app")
};

struct SignallerForeign {
    Q_GADGET
    QML_FOREIGN(undercowl::platform::Signaller)
    QML_NAMED_ELEMENT(Signaller)
    QML_UNCREATABLE("The device hands its tones to the app")
};

} // namespace undercowl::ui
