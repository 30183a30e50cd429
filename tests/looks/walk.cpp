#include "walk.h"

#include <QAccessible>
#include <QQuickItem>
#include <QRectF>

#include <algorithm>
#include <vector>

namespace undercowl::looks {
namespace {

constexpr qreal touch = 48; // dp: Theme.touch
constexpr qreal gap = 8;    // dp between targets, so that a thumb on the edge of one does not press the other
constexpr qreal rounding = 1; // dp that a font's rounding may take

struct Target {
    QRectF rect;
    QString words;
    const QQuickItem* item;
    bool whole; // nothing of it is scrolled away
};

class Walk {
public:
    explicit Walk(QQuickWindow& window) : bounds_(0, 0, window.width(), window.height()) {
        look(*window.contentItem(), bounds_, false);
        overlaps();
        gaps();
    }

    QStringList faults;

private:
    // 'seen' is what the item's ancestors let be seen of it, in the window; 'sideways': it scrolls into view.
    void look(const QQuickItem& item, QRectF seen, bool sideways) {
        if (!item.isVisible() || item.opacity() < 0.05)
            return;
        const QRectF rect = item.mapRectToScene(QRectF(0, 0, item.width(), item.height()));
        if (item.clip())
            seen = seen.intersected(rect);
        sideways = sideways || (item.inherits("QQuickFlickable") &&
                                item.property("contentWidth").toReal() > item.width() + rounding);
        if (item.inherits("QQuickText"))
            lookAtWords(item, rect, seen, sideways);
        if (item.metaObject()->indexOfSignal("triggered()") >= 0 && item.isEnabled())
            lookAtTarget(item, rect, seen, sideways);
        // What lies on top comes last.
        for (const QQuickItem* child : item.childItems())
            look(*child, seen, sideways);
    }

    void lookAtWords(const QQuickItem& item, const QRectF& rect, const QRectF& seen, bool sideways) {
        const QString words = item.property("text").toString();
        if (words.isEmpty() || rect.bottom() < seen.top() || rect.top() > seen.bottom())
            return;
        const qreal wide = item.property("contentWidth").toReal();
        const qreal high = item.property("contentHeight").toReal();
        if (item.property("truncated").toBool())
            faults += QStringLiteral("cut short: \"%1\"").arg(words);
        else if (wide > item.width() + rounding)
            faults += QStringLiteral("wider than its place by %1 dp: \"%2\"")
                          .arg(qRound(wide - item.width()))
                          .arg(words);
        else if (high > item.height() + rounding)
            faults += QStringLiteral("higher than its place by %1 dp: \"%2\"")
                          .arg(qRound(high - item.height()))
                          .arg(words);
        if (!sideways && (rect.left() < -rounding || rect.right() > bounds_.right() + rounding))
            faults += QStringLiteral("past the window's side: \"%1\"").arg(words);
        if (rect.top() < -rounding && seen.top() <= bounds_.top()) // what scrolls is clipped further down
            faults += QStringLiteral("past the window's top: \"%1\"").arg(words);
    }

    void lookAtTarget(const QQuickItem& item, const QRectF& rect, const QRectF& seen, bool sideways) {
        const QRectF part = rect.intersected(seen);
        if (part.isEmpty())
            return;
        QString words = item.property("text").toString();
        if (words.isEmpty())
            words = item.property("title").toString();
        if (rect.width() < touch - rounding || rect.height() < touch - rounding)
            faults += QStringLiteral("too small, %1 x %2 dp: \"%3\"")
                          .arg(qRound(rect.width()))
                          .arg(qRound(rect.height()))
                          .arg(words);
        if (!sideways && (rect.left() < -rounding || rect.right() > bounds_.right() + rounding))
            faults += QStringLiteral("target past the window's side: \"%1\"").arg(words);
        lookAtName(item, words);
        targets_.push_back({part, words, &item, part == rect});
    }

    // What a screen reader says of it: a name, and that it can be pressed.
    void lookAtName(const QQuickItem& item, const QString& words) {
        auto* told = QAccessible::queryAccessibleInterface(const_cast<QQuickItem*>(&item));
        if (told == nullptr || told->text(QAccessible::Name).trimmed().isEmpty())
            faults += QStringLiteral("a target without a name at %1, %2")
                          .arg(qRound(item.mapToScene({0, 0}).x()))
                          .arg(qRound(item.mapToScene({0, 0}).y()));
        else if (told->role() != QAccessible::Button && told->role() != QAccessible::RadioButton &&
                 told->role() != QAccessible::CheckBox)
            faults += QStringLiteral("\"%1\" is no button to a screen reader").arg(words);
    }

    // Side by side or one above the other with too little between.
    void gaps() {
        for (std::size_t i = 0; i < targets_.size(); ++i)
            for (std::size_t k = i + 1; k < targets_.size(); ++k) {
                const QRectF& one = targets_[i].rect;
                const QRectF& other = targets_[k].rect;
                const qreal across = std::max(one.left() - other.right(), other.left() - one.right());
                const qreal down = std::max(one.top() - other.bottom(), other.top() - one.bottom());
                const qreal between = std::max(across, down);
                if (targets_[i].whole && targets_[k].whole && std::min(across, down) < 0 && between >= 0 &&
                    between < gap - rounding)
                    faults += QStringLiteral("\"%1\" and \"%2\" are %3 dp apart")
                                  .arg(targets_[i].words, targets_[k].words)
                                  .arg(qRound(between));
            }
    }

    // Neither in the other, and yet on the same glass.
    void overlaps() {
        for (std::size_t i = 0; i < targets_.size(); ++i)
            for (std::size_t k = i + 1; k < targets_.size(); ++k) {
                const QRectF shared = targets_[i].rect.intersected(targets_[k].rect);
                if (shared.width() <= rounding || shared.height() <= rounding)
                    continue;
                if (targets_[i].item->isAncestorOf(targets_[k].item) || covers(targets_[k].rect))
                    continue;
                faults += QStringLiteral("\"%1\" lies on \"%2\"").arg(targets_[k].words, targets_[i].words);
            }
    }

    // A sheet's shade takes the whole window on purpose.
    [[nodiscard]] bool covers(const QRectF& rect) const {
        return rect.contains(bounds_.adjusted(1, 1, -1, -1));
    }

    QRectF bounds_;
    std::vector<Target> targets_;
};

} // namespace

QStringList faultsOf(QQuickWindow& window) {
    QStringList faults = Walk(window).faults;
    faults.removeDuplicates();
    return faults;
}

} // namespace undercowl::looks
