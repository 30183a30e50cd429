// The device's own camera, through Qt Multimedia.
#pragma once

#include "platform/camera/camera.h"

#include <atomic>
#include <memory>

class QVideoFrame;

namespace undercowl::platform {

class MultimediaCamera : public Camera {
    Q_OBJECT

public:
    explicit MultimediaCamera(QObject* parent = nullptr);
    ~MultimediaCamera() override;

    void start() override;
    void stop() override;
    void capture(const QString& file) override;

protected:
    void aimFocus(QPointF at) override;
    void switchTorch(bool on) override;
    void moveZoom(double factor) override;

private:
    struct Session;
    void learnAbilities(); // they become known, and may change, while the device is opened
    void show(const QVideoFrame& frame);

    std::unique_ptr<Session> session_;
    std::shared_ptr<std::atomic_bool>
        converting_; // a frame is on its way: those that come meanwhile are passed over
    int turned_{};   // degrees clockwise from the device's frame to the upright picture
};

} // namespace undercowl::platform
