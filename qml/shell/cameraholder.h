// Whatever looks through the camera: it is held while its page is on the screen, and released when it is not.
#pragma once

#include "platform/camera/camera.h"
#include "qml/shell/session.h"

#include <QObject>
#include <QPointer>
#include <QQmlParserStatus>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// active: the picture is on the screen.
class CameraHolder : public QObject, public QQmlParserStatus {
    Q_OBJECT
    QML_ANONYMOUS
    Q_INTERFACES(QQmlParserStatus)
    Q_PROPERTY(undercowl::ui::ShopSession* session MEMBER session_ REQUIRED)
    Q_PROPERTY(undercowl::platform::Camera* camera READ camera WRITE setCamera NOTIFY cameraChanged REQUIRED)
    Q_PROPERTY(bool active READ active WRITE setActive NOTIFY activeChanged)
    Q_PROPERTY(bool hasCamera READ hasCamera NOTIFY stateChanged)

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

signals:
    void cameraChanged();
    void activeChanged();
    void stateChanged();

protected:
    virtual void hookUp(platform::Camera& camera) = 0; // connects to what it tells; undone by setCamera()
    [[nodiscard]] ShopSession* session() const { return session_; }

private:
    ShopSession* session_{};
    QPointer<platform::Camera> camera_;
    bool active_{};
};

} // namespace undercowl::ui
