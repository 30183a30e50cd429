#include "qml/style/roundedmask.h"

#include <QPainter>
#include <QPainterPath>

namespace undercowl::ui {

RoundedMask::RoundedMask(QQuickItem* parent) : QQuickPaintedItem(parent) {
    setAntialiasing(true);
}

void RoundedMask::setColor(const QColor& color) {
    if (color == color_)
        return;
    color_ = color;
    update();
    emit changed();
}

void RoundedMask::setRadius(qreal radius) {
    if (qFuzzyCompare(1 + radius, 1 + radius_))
        return;
    radius_ = radius;
    update();
    emit changed();
}

void RoundedMask::paint(QPainter* painter) {
    QPainterPath corners;
    corners.setFillRule(Qt::OddEvenFill);
    corners.addRect(boundingRect());
    corners.addRoundedRect(boundingRect(), radius_, radius_);
    painter->fillPath(corners, color_);
}

} // namespace undercowl::ui
