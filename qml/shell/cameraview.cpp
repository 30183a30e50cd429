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

QRectF CameraView::drawn() const {
    const QSizeF shown = QSizeF(picture_.size()).scaled(size(), Qt::KeepAspectRatioByExpanding);
    return {QPointF((width() - shown.width()) / 2, (height() - shown.height()) / 2), shown};
}

QPointF CameraView::inPicture(QPointF at) const {
    const QRectF target = drawn();
    if (target.isEmpty())
        return {0.5, 0.5};
    return {(at.x() - target.x()) / target.width(), (at.y() - target.y()) / target.height()};
}

void CameraView::paint(QPainter* painter) {
    if (picture_.isNull())
        return;
    painter->setRenderHint(QPainter::SmoothPixmapTransform);
    painter->drawImage(drawn(), picture_);
}

} // namespace undercowl::ui
