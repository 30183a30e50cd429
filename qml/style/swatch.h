// How insulation colours look on a screen. Stand-ins chosen by eye to be told apart on a phone, not measured:
// never used to read a photo. The words and codes beside them carry the meaning.
#pragma once

#include "core/colour/insulation.h"

#include <QColor>
#include <QPainter>

#include <cstdint>

namespace undercowl::ui {

// The hatching drawn over a swatch for eyes that cannot tell the hues apart. It follows the engravers' habit,
// centuries old, of lining colours that cannot be printed: red upright, blue level, green and violet
// slanting, black crossed, yellow dotted. Light colours repeat their parent's lines, broken.
enum class Hatch : std::uint8_t { None, Upright, Level, Falling, Rising, Crossed, Dotted, Woven, Barred };

struct Swatch {
    QColor colour;
    Hatch hatch{};
    bool broken{}; // lines are dashed
};

[[nodiscard]] const Swatch& swatch(colour::Insulation insulation);

// Draws the hatching of `swatch` into the painter's clip within `area`, in black or white, whichever shows.
void paintHatch(QPainter& painter, const QRectF& area, const Swatch& swatch);

} // namespace undercowl::ui
