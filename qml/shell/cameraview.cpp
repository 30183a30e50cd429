#include "qml/shell/cameraview.h"

#include <QPainter>

namespace undercowl::ui {

void CameraView::setCamera(platform::Camera* camera) {
    if (camera_ == camera)
        return;
    if (camera_ != nullptr)
        camera_->disconnect(this);
    camera_ = camera;
    if (camera_ != nullptr)
        connect(camera_, &platform::Camera::frame, this, [this](const QImage& picture) {
            picture_ = picture;
            update();
        });
    emit cameraChanged();
}

void CameraView::paint(QPainter* painter) {
    if (picture_.isNull())
        return;
    const QSizeF shown = QSizeF(picture_.size()).scaled(size(), Qt::KeepAspectRatioByExpanding);
    const QRectF target(QPointF((width() - shown.width()) / 2, (height() - shown.height()) / 2), shown);
    painter->setRenderHint(QPainter::SmoothPixmapTransform);
    painter->drawImage(target, picture_);
}

} // namespace undercowl::ui
