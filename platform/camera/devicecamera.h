// The device's own camera. What drives it is loaded with the first start(), not with the program.
#pragma once

#include "platform/camera/camera.h"

#include <QtPlugin>

#include <memory>

namespace undercowl::platform {

// The plugin "camera".
class CameraMaker {
public:
    virtual ~CameraMaker() = default;
    [[nodiscard]] virtual std::unique_ptr<Camera> deviceCamera() const = 0;
};

class DeviceCamera : public Camera {
    Q_OBJECT

public:
    using Camera::Camera;

    void start() override; // Failed, with the way on, where the plugin is missing
    void stop() override;
    void capture(const QString& file) override;

protected:
    void aimFocus(QPointF at) override;
    void switchTorch(bool on) override;
    void moveZoom(double factor) override;

private:
    bool load();

    std::unique_ptr<Camera> driver_; // null before the first start()
};

} // namespace undercowl::platform

Q_DECLARE_INTERFACE(undercowl::platform::CameraMaker, "undercowl.camera")
