// Lets QML name the types of the camera and of the level that it is handed.
#pragma once

#include "platform/camera/camera.h"
#include "platform/level/level.h"

#include <QtQml/qqml.h>

namespace undercowl::ui {

struct CameraForeign {
    Q_GADGET
    QML_FOREIGN(undercowl::platform::Camera)
    QML_NAMED_ELEMENT(Camera)
    QML_UNCREATABLE("The device hands its camera to the app")
};

struct LevelForeign {
    Q_GADGET
    QML_FOREIGN(undercowl::platform::Level)
    QML_NAMED_ELEMENT(Level)
    QML_UNCREATABLE("The device hands its level to the app")
};

} // namespace undercowl::ui
