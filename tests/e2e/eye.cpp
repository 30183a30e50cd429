#include "tests/e2e/eye.h"

#include <QAccessible>
#include <QColor>
#include <QQuickItem>
#include <QQuickWindow>

#include <algorithm>
#include <functional>
#include <optional>

namespace undercowl::e2e {

namespace {

// From back to front; what is hidden and all in it is left out.
void walk(QQuickItem& item, double opacity, const std::function<void(QQuickItem&, double)>& visit) {
    opacity *= item.opacity();
    if (!item.isVisible() || opacity < 0.05)
        return;
    visit(item, opacity);
    auto children = item.childItems();
    std::ranges::stable_sort(children, {}, &QQuickItem::z);
    for (QQuickItem* child : children)
        walk(*child, opacity, visit);
}

bool isIn(const QQuickItem& item, const QQuickItem& whole) {
    return &item == &whole || whole.isAncestorOf(&item);
}

QAccessible::Role roleOf(QQuickItem& item) {
    auto* face = QAccessible::queryAccessibleInterface(&item);
    return face == nullptr ? QAccessible::NoRole : face->role();
}

std::optional<Kind> kindOf(QAccessible::Role role) {
    switch (role) {
    case QAccessible::Button:
    case QAccessible::RadioButton:
    case QAccessible::EditableText: return Kind::Control;
    case QAccessible::Graphic:
    case QAccessible::Canvas: return Kind::Photo;
    default: return std::nullopt;
    }
}

bool paints(const QQuickItem& item, double opacity) {
    if (item.inherits("QQuickImage"))
        return true;
    return item.inherits("QQuickRectangle") &&
           item.property("color").value<QColor>().alphaF() * opacity > 0.05;
}

} // namespace

QString nameOf(QQuickItem& item) {
    auto* face = QAccessible::queryAccessibleInterface(&item);
    return face == nullptr ? QString() : face->text(QAccessible::Name);
}

std::vector<QQuickItem*> touchables(QQuickWindow& window, const QString& name, Kind kind) {
    std::vector<QQuickItem*> found;
    walk(*window.contentItem(), 1, [&](QQuickItem& item, double /*opacity*/) {
        if (kind != kindOf(roleOf(item)))
            return;
        const QString called = nameOf(item);
        if (item.isEnabled() && (called == name || called.startsWith(name + QStringLiteral(", "))))
            found.push_back(&item);
    });
    std::ranges::stable_sort(
        found, {}, [&](QQuickItem* item) { return std::pair(nameOf(*item) != name, areaOf(*item).top()); });
    return found;
}

QRectF areaOf(const QQuickItem& item) {
    return item.mapRectToScene(QRectF(0, 0, item.width(), item.height()));
}

QRectF seenOf(const QQuickItem& item) {
    QRectF seen = areaOf(item) & QRectF(QPointF(0, 0), QSizeF(item.window()->size()));
    for (const QQuickItem* round = item.parentItem(); round != nullptr; round = round->parentItem())
        if (round->clip())
            seen &= areaOf(*round);
    return seen;
}

QQuickItem* scrollerOf(const QQuickItem& item) {
    for (QQuickItem* round = item.parentItem(); round != nullptr; round = round->parentItem())
        if (round->inherits("QQuickFlickable"))
            return round;
    return nullptr;
}

bool covered(QQuickWindow& window, QQuickItem& item, QPointF at) {
    // A finger on a photo may be taken by an area over it; a button takes its own.
    const bool takesTouch = kindOf(roleOf(item)) != Kind::Photo;
    const QQuickItem* top = nullptr;
    walk(*window.contentItem(), 1, [&](QQuickItem& other, double opacity) {
        const bool counts =
            &other == &item || paints(other, opacity) ||
            (takesTouch && (other.acceptedMouseButtons() != Qt::NoButton || other.acceptTouchEvents()));
        if (counts && seenOf(other).contains(at))
            top = &other;
    });
    return top == nullptr || !isIn(*top, item);
}

QStringList textsOn(QQuickWindow& window) {
    QStringList texts;
    walk(*window.contentItem(), 1, [&](QQuickItem& item, double /*opacity*/) {
        if (item.inherits("QQuickText") || item.inherits("QQuickTextInput") ||
            item.inherits("QQuickTextEdit")) {
            const QString text = item.property("text").toString();
            if (!text.isEmpty())
                texts += text;
        }
    });
    return texts;
}

} // namespace undercowl::e2e
