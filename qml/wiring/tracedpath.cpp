#include "qml/wiring/tracedpath.h"

#include <QPainter>

namespace undercowl::ui {

TracedPath::TracedPath(QQuickItem* parent) : QQuickPaintedItem(parent) {
    connect(this, &TracedPath::lookChanged, this, [this] { update(); });
}

QVariantList TracedPath::points() const {
    QVariantList list;
    for (const QPointF& point : points_)
        list.append(point);
    return list;
}

void TracedPath::setPoints(const QVariantList& points) {
    QPolygonF polygon;
    for (const QVariant& point : points)
        polygon.append(point.toPointF());
    if (polygon == points_)
        return;
    points_ = polygon;
    update();
    emit pointsChanged();
}

void TracedPath::paint(QPainter* painter) {
    if (points_.size() < 2)
        return;
    painter->setRenderHint(QPainter::Antialiasing);
    for (const auto& [colour, width] : {std::pair{dark_, thickness_ * 2}, std::pair{light_, thickness_}}) {
        painter->setPen(QPen(colour, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter->drawPolyline(points_);
    }
}

} // namespace undercowl::ui
