#include "qml/wiring/tracedpath.h"

#include <QLineF>
#include <QPainter>

#include <algorithm>
#include <utility>
#include <vector>

namespace undercowl::ui {

namespace {

// The line moved to one side by so much, for as much of it as turns gently.
QPolygonF beside(const QPolygonF& line, qreal by) {
    QPolygonF moved;
    for (qsizetype i = 0; i < line.size(); ++i) {
        const QLineF along(line[std::max<qsizetype>(0, i - 1)], line[std::min(line.size() - 1, i + 1)]);
        if (along.length() > 0)
            moved.append(line[i] + (along.normalVector().unitVector().p2() - along.p1()) * by);
    }
    return moved;
}

} // namespace

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
    std::vector<QPolygonF> lines{points_};
    if (across_ > 0) {
        lines.push_back(beside(points_, across_ / 2));
        lines.push_back(beside(points_, -across_ / 2));
    }
    for (const auto& [colour, width] : {std::pair{dark_, thickness_ * 2}, std::pair{light_, thickness_}}) {
        painter->setPen(QPen(colour, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        for (const QPolygonF& line : lines)
            painter->drawPolyline(line);
    }
}

} // namespace undercowl::ui
