// What a person, or a screen reader, finds on a window: for tests that touch what is visible and nothing
// else.
#pragma once

#include <QPointF>
#include <QRectF>
#include <QString>
#include <QStringList>

#include <cstdint>
#include <vector>

class QQuickItem;
class QQuickWindow;

namespace undercowl::e2e {

// The name that is read out; empty for what has none.
[[nodiscard]] QString nameOf(QQuickItem& item);

enum class Kind : std::uint8_t { Control, Photo };

// Buttons, answers and fields, or photos, that are shown, enabled and called by that name: alone, or followed
// by a comma and more, as list rows are. Exact names first, then from top to bottom.
[[nodiscard]] std::vector<QQuickItem*> touchables(QQuickWindow& window, const QString& name,
                                                  Kind kind = Kind::Control);

// In the window's coordinates: where the item lies, and what of it the window and all clips leave to be seen.
[[nodiscard]] QRectF areaOf(const QQuickItem& item);
[[nodiscard]] QRectF seenOf(const QQuickItem& item);

// The nearest thing round the item that a finger scrolls; null if there is none.
[[nodiscard]] QQuickItem* scrollerOf(const QQuickItem& item);

// Whether something else is painted over the item at that point of the window, or takes the touch there.
[[nodiscard]] bool covered(QQuickWindow& window, QQuickItem& item, QPointF at);

// Every text that is shown, those scrolled out of view too, in the order in which they are painted.
[[nodiscard]] QStringList textsOn(QQuickWindow& window);

} // namespace undercowl::e2e
