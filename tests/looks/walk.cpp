#include "walk.h"

#include <QAccessible>
#include <QFont>
#include <QJSValue>
#include <QQuickItem>
#include <QRectF>

#include <algorithm>
#include <vector>

namespace undercowl::looks {
namespace {

constexpr qreal rounding = 1;     // dp that a font's rounding may take
constexpr int smallestWords = 15; // dp: Theme.asideSize
constexpr qreal dpToTheMillimetre = 6.4;
constexpr int mainKind = 1; // ActionButton.Main
constexpr int nameKind = 4; // Label.Name; then Code and Value
constexpr int codeKind = 5;
constexpr int actionsBesideKeys = 6; // as many as are found without looking twice

struct Target {
    QRectF rect;
    QString words;
    const QQuickItem* item;
    bool whole;                 // nothing of it is scrolled away
    const QQuickItem* scrolled; // by this it was moved; null: it is where the page begins
};

// QML's types are known by what the names of their classes begin with.
bool isA(const QQuickItem& item, const char* type) {
    return QByteArrayView(item.metaObject()->className()).startsWith(type);
}

bool within(const QQuickItem& item, const char* type) {
    for (const QQuickItem* at = &item; at != nullptr; at = at->parentItem())
        if (isA(*at, type))
            return true;
    return false;
}

// Large words may be drawn smaller than they are set, to fit.
int drawnSize(const QQuickItem& words) {
    const int set = words.property("font").value<QFont>().pixelSize();
    const int drawn = words.property("fontInfo").value<QJSValue>().property("pixelSize").toInt();
    return drawn > 0 ? std::min(set, drawn) : set;
}

class Walk {
public:
    Walk(QQuickWindow& window, const Measures& by) : by_(by), bounds_(0, 0, window.width(), window.height()) {
        look(*window.contentItem(), bounds_, false);
        overlaps();
        gaps();
        if (by_.action > 0)
            counts();
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
        if (item.inherits("QQuickPopupItem"))
            targets_.clear(); // what lies under a sheet cannot be touched
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
        if (words.isEmpty())
            return;
        if (const int size = drawnSize(item); size < smallestWords)
            faults += QStringLiteral("words of %1 dp: \"%2\"").arg(size).arg(words);
        else if (by_.action > 0 && size < leastFarSize(item) - rounding)
            faults += QStringLiteral("%1 dp is too small for a metre: \"%2\"").arg(size).arg(words);
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
        // What scrolls is clipped further down.
        if (!seen.isEmpty() && rect.top() < -rounding && seen.top() <= bounds_.top())
            faults += QStringLiteral("past the window's top: \"%1\"").arg(words);
    }

    void lookAtTarget(const QQuickItem& item, const QRectF& rect, const QRectF& seen, bool sideways) {
        if (rect.isEmpty())
            return;
        QString words = item.property("text").toString();
        if (words.isEmpty())
            words = item.property("title").toString();
        if (rect.width() < by_.touch - rounding || rect.height() < leastHeight(item) - rounding)
            faults += QStringLiteral("too small, %1 x %2 dp: \"%3\"")
                          .arg(qRound(rect.width()))
                          .arg(qRound(rect.height()))
                          .arg(words);
        if (!sideways && (rect.left() < -rounding || rect.right() > bounds_.right() + rounding))
            faults += QStringLiteral("target past the window's side: \"%1\"").arg(words);
        lookAtName(item, words);
        if (const QRectF part = rect.intersected(seen); !part.isEmpty())
            targets_.push_back({part, words, &item, part == rect, scrollerOf(item)});
    }

    [[nodiscard]] static const QQuickItem* scrollerOf(const QQuickItem& item) {
        for (const QQuickItem* at = item.parentItem(); at != nullptr; at = at->parentItem())
            if (at->inherits("QQuickFlickable") && at->property("contentY").toReal() > rounding)
                return at;
        return nullptr;
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

    // What must be read from a metre away, by the kind of Label.
    [[nodiscard]] static qreal leastFarSize(const QQuickItem& words) {
        const int kind = isA(words, "Label_") ? words.property("kind").toInt() : 0;
        return kind >= codeKind ? 6 * dpToTheMillimetre : kind == nameKind ? 4 * dpToTheMillimetre : 0;
    }

    [[nodiscard]] static bool isKey(const QQuickItem& item) {
        return within(item, "Keypad_") || isA(item, "WireKey_") || isA(item, "Chip_");
    }

    // An answer of a form is as large as a key, but no keypad or picker.
    [[nodiscard]] static bool isAmongMany(const QQuickItem& item) {
        return isKey(item) && !isA(item, "Chip_");
    }

    [[nodiscard]] qreal leastHeight(const QQuickItem& item) const {
        if (by_.action <= 0)
            return by_.touch;
        return isKey(item) ? by_.key : item.property("kind").toInt() == mainKind ? by_.main : by_.action;
    }

    // Beside keys.
    void counts() {
        const auto keys =
            std::ranges::count_if(targets_, [](const Target& each) { return isAmongMany(*each.item); });
        const auto actions =
            std::ranges::count_if(targets_, [](const Target& each) { return !isKey(*each.item); });
        if (keys > 0 && actions > actionsBesideKeys)
            faults += QStringLiteral("%1 actions beside keys").arg(actions);
    }

    // Side by side or one above the other with too little between. What scrolls comes as near to what does
    // not as it is scrolled.
    void gaps() {
        for (std::size_t i = 0; i < targets_.size(); ++i)
            for (std::size_t k = i + 1; k < targets_.size(); ++k) {
                const QRectF& one = targets_[i].rect;
                const QRectF& other = targets_[k].rect;
                const qreal across = std::max(one.left() - other.right(), other.left() - one.right());
                const qreal down = std::max(one.top() - other.bottom(), other.top() - one.bottom());
                const qreal between = std::max(across, down);
                if (targets_[i].whole && targets_[k].whole && targets_[i].scrolled == targets_[k].scrolled &&
                    std::min(across, down) < 0 && between >= 0 && between < by_.gap - rounding)
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

    Measures by_;
    QRectF bounds_;
    std::vector<Target> targets_;
};

} // namespace

Measures measuresOf(bool atTheLift, QSize window) {
    if (!atTheLift)
        return {};
    const bool roomy = window.width() >= 412 && window.height() >= 915; // upright
    Measures at;
    at.touch = 10 * dpToTheMillimetre;
    at.gap = 2 * dpToTheMillimetre;
    at.action = (roomy ? 15 : 12) * dpToTheMillimetre;
    at.main = 15 * dpToTheMillimetre;
    at.key = (roomy ? 13 : 10) * dpToTheMillimetre;
    return at;
}

QStringList faultsOf(QQuickWindow& window, const Measures& by) {
    QStringList faults = Walk(window, by).faults;
    faults.removeDuplicates();
    return faults;
}

} // namespace undercowl::looks
