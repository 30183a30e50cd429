#include "qml/handover/signaturepad.h"

#include <QMouseEvent>
#include <QPainter>

namespace undercowl::ui {

namespace {

constexpr int pictureWidth = 800;
constexpr qreal penWidth = 3; // dp

} // namespace

SignaturePad::SignaturePad(QQuickItem* parent) : QQuickPaintedItem(parent) {
    setAcceptedMouseButtons(Qt::LeftButton);
    setAntialiasing(true);
    connect(this, &SignaturePad::inkChanged, this, [this] { update(); });
}

void SignaturePad::mousePressEvent(QMouseEvent* event) {
    // A finger that draws scrolls nothing.
    setKeepMouseGrab(true);
    strokes_.emplace_back();
    strokes_.back() << event->position();
    update();
    emit drawn();
}

void SignaturePad::mouseMoveEvent(QMouseEvent* event) {
    if (strokes_.empty())
        return;
    strokes_.back() << event->position();
    update();
}

void SignaturePad::clear() {
    strokes_.clear();
    update();
    emit drawn();
}

void SignaturePad::draw(QPainter& painter, const QColor& ink, qreal scale) const {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(scale, scale);
    painter.setPen(QPen(ink, penWidth, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    for (const QPolygonF& stroke : strokes_) {
        if (stroke.size() == 1)
            painter.drawPoint(stroke.front());
        else
            painter.drawPolyline(stroke);
    }
}

void SignaturePad::paint(QPainter* painter) {
    draw(*painter, ink_, 1);
}

QImage SignaturePad::picture() const {
    if (empty() || width() <= 0 || height() <= 0)
        return {};
    const qreal scale = pictureWidth / width();
    QImage image(pictureWidth, qRound(height() * scale), QImage::Format_Grayscale8);
    image.fill(Qt::white);
    QPainter painter(&image);
    draw(painter, Qt::black, scale);
    return image;
}

} // namespace undercowl::ui
