#include "qml/style/wirestretch.h"

#include "qml/style/swatch.h"

#include <QLinearGradient>
#include <QPainter>
#include <QPainterPath>

#include <cmath>
#include <numbers>

namespace undercowl::ui {
namespace {

// In heights of the wire.
constexpr double bandWidth = 0.36;
constexpr double bandStep = 1.35;
constexpr double bandLead = 0.55;

std::optional<colour::Insulation> known(const QString& code) {
    return colour::insulationFromCode(code.trimmed().toStdString());
}

// A stripe wound round a cylinder, seen from the side: steep in the middle, turning away at both edges.
QPainterPath band(const QRectF& body, double left) {
    constexpr int steps = 14;
    const double height = body.height();
    QPainterPath path;
    const auto point = [&](int step, double offset) {
        const double turn = std::numbers::pi * step / steps;
        const double lead = bandLead * height * (1.0 - step / static_cast<double>(steps));
        return QPointF(left + offset + lead, body.top() + height / 2 * (1.0 - std::cos(turn)));
    };
    path.moveTo(point(0, 0));
    for (int step = 1; step <= steps; ++step)
        path.lineTo(point(step, 0));
    for (int step = steps; step >= 0; --step)
        path.lineTo(point(step, bandWidth * height));
    path.closeSubpath();
    return path;
}

void paintLight(QPainter& painter, const QRectF& body) {
    QLinearGradient light(body.topLeft(), body.bottomLeft());
    light.setColorAt(0.00, QColor(255, 255, 255, 30));
    light.setColorAt(0.16, QColor(255, 255, 255, 78));
    light.setColorAt(0.34, QColor(255, 255, 255, 20));
    light.setColorAt(0.50, QColor(0, 0, 0, 0));
    light.setColorAt(0.78, QColor(0, 0, 0, 50));
    light.setColorAt(1.00, QColor(0, 0, 0, 105));
    painter.fillRect(body, light);
}

} // namespace

WireStretch::WireStretch(QQuickItem* parent) : QQuickPaintedItem(parent) {
    setAntialiasing(true);
}

template<typename Value>
void WireStretch::set(Value& member, const Value& value) {
    if (member == value)
        return;
    member = value;
    update();
    emit changed();
}

void WireStretch::setBase(const QString& code) {
    set(base_, code);
}

void WireStretch::setTracer(const QString& code) {
    set(tracer_, code);
}

void WireStretch::setEdge(const QColor& edge) {
    set(edge_, edge);
}

void WireStretch::setHatched(bool hatched) {
    set(hatched_, hatched);
}

void WireStretch::setRadius(qreal radius) {
    set(radius_, radius);
}

void WireStretch::setGap(qreal gap) {
    set(gap_, gap);
}

void WireStretch::paintTracer(QPainter& painter, const QRectF& body, colour::Insulation tracer) const {
    const double step = bandStep * body.height();
    const double width = (bandWidth + bandLead) * body.height();
    // Each visible side gets bands that begin at the same distance from the sleeve, so that a short side
    // shows one too.
    const double side = (body.width() - gap_) / 2;
    const double first = gap_ > 0 ? (side - width) / 2 : (std::fmod(body.width(), step) - width) / 2;
    painter.setPen(Qt::NoPen);
    painter.setBrush(swatch(tracer).colour);
    if (gap_ <= 0) {
        for (int turn = 0; first + turn * step < body.width(); ++turn)
            painter.drawPath(band(body, body.left() + first + turn * step));
        return;
    }
    const double offset = std::fmod(first, step);
    for (int turn = 0; offset + turn * step < side; ++turn) {
        const double x = offset + turn * step;
        painter.drawPath(band(body, body.left() + x));
        painter.drawPath(band(body, body.right() - side + x));
    }
}

void WireStretch::paint(QPainter* painter) {
    const QRectF body = boundingRect().adjusted(0.75, 0.75, -0.75, -0.75);
    if (body.isEmpty())
        return;
    QPainterPath outline;
    outline.addRoundedRect(body, radius_, radius_);
    const auto base = known(base_);
    if (base) {
        painter->save();
        painter->setClipPath(outline);
        painter->fillRect(body, swatch(*base).colour);
        if (const auto tracer = known(tracer_))
            paintTracer(*painter, body, *tracer);
        if (hatched_) {
            const double third = body.width() / 3;
            paintHatch(*painter, body.adjusted(2 * third, 0, 0, 0), swatch(*base));
        }
        paintLight(*painter, body);
        painter->restore();
    }
    painter->setPen(QPen(edge_, 1.5, base ? Qt::SolidLine : Qt::DashLine));
    painter->setBrush(Qt::NoBrush);
    painter->drawPath(outline);
}

} // namespace undercowl::ui
