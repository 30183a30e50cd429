// Lets QML name the type of the camera that it is handed.
#pragma once

#include "platform/camera/camera.h"

#include <QtQml/qqml.h>

namespace undercowl::ui {

struct CameraForeign {
    Q_GADGET
    QML_FOREIGN(undercowl::platform::Camera)
    QML_NAMED_ELEMENT(Camera)
    QML_UNCREATABLE("The device hands its camera to the app")
};

} // namespace undercowl::ui
