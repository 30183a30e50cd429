#pragma once

#include "platform/camera/devicecamera.h"

#include <QObject>

namespace undercowl::platform {

class CameraPlugin : public QObject, public CameraMaker {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID "undercowl.camera")
    Q_INTERFACES(undercowl::platform::CameraMaker)

public:
    [[nodiscard]] std::unique_ptr<Camera> deviceCamera() const override;
};

} // namespace undercowl::platform
