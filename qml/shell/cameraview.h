// What the camera sees, drawn as it comes. Works with every renderer.
#pragma once

#include "platform/camera/camera.h"

#include <QImage>
#include <QPointer>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

class CameraView : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(undercowl::platform::Camera* camera READ camera WRITE setCamera NOTIFY cameraChanged)

public:
    explicit CameraView(QQuickItem* parent = nullptr) : QQuickPaintedItem(parent) {}

    [[nodiscard]] platform::Camera* camera() const { return camera_; }
    void setCamera(platform::Camera* camera);
    void paint(QPainter* painter) override; // fills the item, cropping what sticks out

    // A place of the item, in parts of the picture that is drawn there; the middle while there is none.
    Q_INVOKABLE [[nodiscard]] QPointF inPicture(QPointF at) const;

signals:
    void cameraChanged();

private:
    [[nodiscard]] QRectF drawn() const; // where all of the picture would lie

    QPointer<platform::Camera> camera_;
    QImage picture_;
};

} // namespace undercowl::ui
