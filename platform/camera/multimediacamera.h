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

private:
    struct Session;
    void show(const QVideoFrame& frame);

    std::unique_ptr<Session> session_;
    std::shared_ptr<std::atomic_bool>
        converting_; // a frame is on its way: those that come meanwhile are passed over
};

} // namespace undercowl::platform
