// The page by the keyboard alone: Tab goes round, either way, and every target and field that is seen must be
// on its way.
#include "walk.h"

#include <QQuickItem>
#include <QTest>

#include <set>

namespace undercowl::looks {
namespace {

constexpr int longestRound = 400; // more than any page holds

bool isTarget(const QQuickItem& item) {
    const QMetaObject* type = item.metaObject();
    return (type->indexOfSignal("triggered()") >= 0 && item.property("focusPolicy").toInt() != Qt::NoFocus) ||
           type->indexOfProperty("cursorPosition") >= 0;
}

void gather(QQuickItem& item, std::vector<QQuickItem*>& found) {
    if (!item.isVisible() || !item.isEnabled())
        return;
    if (isTarget(item) && item.width() > 0 && item.height() > 0)
        found.push_back(&item);
    for (QQuickItem* child : item.childItems())
        gather(*child, found);
}

bool isUnder(const QQuickItem* item, const char* type) {
    for (; item != nullptr; item = item->parentItem())
        if (item->inherits(type))
            return true;
    return false;
}

QString wordsOf(const QQuickItem& item) {
    for (const char* name : {"text", "title", "placeholderText"})
        if (const QString words = item.property(name).toString(); !words.isEmpty())
            return words;
    return QString::fromLatin1(item.metaObject()->className());
}

} // namespace

QStringList unreachedOf(QQuickWindow& window) {
    if (isUnder(window.activeFocusItem(), "QQuickPopupItem"))
        return {}; // a sheet keeps the keys to itself
    std::set<const QQuickItem*> reached;
    for (const Qt::Key key : {Qt::Key_Tab, Qt::Key_Backtab}) { // a list is entered where it was left
        const QQuickItem* first = nullptr;
        for (int i = 0; i < longestRound; ++i) {
            QTest::keyClick(&window, key);
            const QQuickItem* now = window.activeFocusItem();
            if (now == first)
                break;
            if (first == nullptr)
                first = now;
            for (const QQuickItem* at = now; at != nullptr; at = at->parentItem())
                reached.insert(at); // a field within what is tabbed to
        }
    }
    std::vector<QQuickItem*> targets;
    gather(*window.contentItem(), targets);
    QStringList faults;
    for (const QQuickItem* target : targets)
        if (!reached.contains(target))
            faults += QStringLiteral("no Tab leads to \"%1\"").arg(wordsOf(*target));
    faults.removeDuplicates();
    return faults;
}

} // namespace undercowl::looks
