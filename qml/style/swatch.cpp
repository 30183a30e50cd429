#include "qml/style/swatch.h"

#include <QPen>

#include <array>
#include <cmath>

namespace undercowl::ui {
namespace {

constexpr double hatchStep = 7.0;
constexpr double hatchWidth = 1.2;
constexpr double hatchOpacity = 0.42;

// In the order of colour::Insulation.
const std::array<Swatch, colour::allInsulations.size()>& swatches() {
    static const std::array<Swatch, colour::allInsulations.size()> table{{
        {QColor(0x1E, 0x1E, 0x20), Hatch::Crossed, false}, // BK
        {QColor(0x74, 0x45, 0x25), Hatch::Woven, false},   // BN
        {QColor(0xC9, 0x24, 0x1C), Hatch::Upright, false}, // RD
        {QColor(0xF0, 0x7F, 0x1A), Hatch::Barred, false},  // OG
        {QColor(0xF2, 0xD0, 0x24), Hatch::Dotted, false},  // YE
        {QColor(0x2B, 0x8A, 0x50), Hatch::Falling, false}, // GN
        {QColor(0x22, 0x50, 0xB4), Hatch::Level, false},   // BU
        {QColor(0x74, 0x3D, 0xA0), Hatch::Rising, false},  // VT
        {QColor(0x8D, 0x93, 0x98), Hatch::Crossed, true},  // GY
        {QColor(0xF5, 0xF3, 0xEC), Hatch::None, false},    // WH
        {QColor(0xF0, 0x92, 0xAC), Hatch::Upright, true},  // PK
        {QColor(0x25, 0xA5, 0xA0), Hatch::Barred, true},   // TQ
        {QColor(0x7E, 0xB9, 0xEA), Hatch::Level, true},    // LBU
        {QColor(0x93, 0xCE, 0x5C), Hatch::Falling, true},  // LGN
    }};
    return table;
}

// How many lines `step` apart lie in `length`.
int lines(double length, double step) {
    return static_cast<int>(std::ceil(length / step));
}

void level(QPainter& painter, const QRectF& area) {
    for (int line = 0; line < lines(area.height(), hatchStep); ++line) {
        const double y = area.top() + (line + 0.5) * hatchStep;
        painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y));
    }
}

void upright(QPainter& painter, const QRectF& area) {
    for (int line = 0; line < lines(area.width(), hatchStep); ++line) {
        const double x = area.left() + (line + 0.5) * hatchStep;
        painter.drawLine(QPointF(x, area.top()), QPointF(x, area.bottom()));
    }
}

// Lines at 45 degrees; `rise` is the sideways run from the upper edge to the lower one.
void slanting(QPainter& painter, const QRectF& area, double rise) {
    const double step = hatchStep * std::sqrt(2.0);
    for (int line = 0; line < lines(area.width() + 2 * area.height(), step); ++line) {
        const double x = area.left() - area.height() + line * step;
        painter.drawLine(QPointF(x, area.top()), QPointF(x + rise, area.bottom()));
    }
}

void dotted(QPainter& painter, const QRectF& area) {
    for (int row = 0; row < lines(area.height(), hatchStep); ++row) {
        for (int dot = 0; dot < lines(area.width(), hatchStep); ++dot) {
            const QPointF middle(area.left() + (dot + (row % 2 == 0 ? 0.5 : 1.0)) * hatchStep,
                                 area.top() + (row + 0.5) * hatchStep);
            painter.drawEllipse(middle, hatchWidth / 2, hatchWidth / 2);
        }
    }
}

} // namespace

const Swatch& swatch(colour::Insulation insulation) {
    return swatches().at(static_cast<std::size_t>(insulation));
}

void paintHatch(QPainter& painter, const QRectF& area, const Swatch& swatch) {
    if (swatch.hatch == Hatch::None)
        return;
    painter.save();
    painter.setClipRect(area, Qt::IntersectClip);
    const bool dark = qGray(swatch.colour.rgb()) < 96;
    QColor line = dark ? QColor(Qt::white) : QColor(Qt::black);
    line.setAlphaF(static_cast<float>(hatchOpacity));
    QPen pen(line, hatchWidth, swatch.broken ? Qt::DashLine : Qt::SolidLine, Qt::FlatCap);
    painter.setPen(pen);
    switch (swatch.hatch) {
    case Hatch::None: break;
    case Hatch::Upright: upright(painter, area); break;
    case Hatch::Level: level(painter, area); break;
    case Hatch::Falling: slanting(painter, area, area.height()); break;
    case Hatch::Rising: slanting(painter, area, -area.height()); break;
    case Hatch::Crossed:
        level(painter, area);
        upright(painter, area);
        break;
    case Hatch::Dotted: dotted(painter, area); break;
    case Hatch::Woven:
        slanting(painter, area, area.height());
        slanting(painter, area, -area.height());
        break;
    case Hatch::Barred:
        upright(painter, area);
        slanting(painter, area, area.height());
        break;
    }
    painter.restore();
}

} // namespace undercowl::ui
