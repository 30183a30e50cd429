// Whatever looks through the camera: it is held while its page is on the screen, and released when it is not.
#pragma once

#include "platform/camera/camera.h"
#include "qml/shell/session.h"

#include <QObject>
#include <QPointer>
#include <QQmlParserStatus>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// active: the picture is on the screen. The camera is released, and its lamp is out, while the app is in the
// background or the phone is locked, too.
class CameraHolder : public QObject, public QQmlParserStatus {
    Q_OBJECT
    QML_ANONYMOUS
    Q_INTERFACES(QQmlParserStatus)
    Q_PROPERTY(undercowl::ui::ShopSession* session MEMBER session_ REQUIRED)
    Q_PROPERTY(undercowl::platform::Camera* camera READ camera WRITE setCamera NOTIFY cameraChanged REQUIRED)
    Q_PROPERTY(bool active READ active WRITE setActive NOTIFY activeChanged)
    Q_PROPERTY(bool hasCamera READ hasCamera NOTIFY stateChanged)
    Q_PROPERTY(bool live READ live NOTIFY stateChanged)

public:
    explicit CameraHolder(QObject* parent = nullptr) : QObject(parent) {}
    ~CameraHolder() override;

    void classBegin() override {}
    void componentComplete() override;

    [[nodiscard]] platform::Camera* camera() const { return camera_; }
    void setCamera(platform::Camera* camera);
    [[nodiscard]] bool active() const { return active_; }
    void setActive(bool active);
    [[nodiscard]] bool hasCamera() const; // false: only files will do
    [[nodiscard]] bool live() const;      // pictures come

signals:
    void cameraChanged();
    void activeChanged();
    void released(); // what was under way at the camera will not be answered any more
    void stateChanged();

protected:
    virtual void hookUp(platform::Camera& camera) = 0; // connects to what it tells; undone by setCamera()
    [[nodiscard]] ShopSession* session() const { return session_; }

private:
    void hold(); // or let go

    ShopSession* session_{};
    QPointer<platform::Camera> camera_;
    bool active_{};
    bool away_{}; // the app is not to be seen
    bool held_{};
};

} // namespace undercowl::ui
