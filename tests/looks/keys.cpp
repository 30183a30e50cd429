// The page by the keyboard: Tab alone goes round, either way, and every target and field that is seen must be
// on its way; and what the page shows while its fields are typed into.
#include "walk.h"

#include <QPointer>
#include <QQuickItem>
#include <QTest>

#include <algorithm>
#include <iterator>
#include <set>

namespace undercowl::looks {
namespace {

constexpr int longestRound = 400; // more than any page holds

bool isField(const QQuickItem& item) {
    return item.metaObject()->indexOfProperty("cursorPosition") >= 0;
}

bool isTarget(const QQuickItem& item) {
    return (item.metaObject()->indexOfSignal("triggered()") >= 0 &&
            item.property("focusPolicy").toInt() != Qt::NoFocus) ||
           isField(item);
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

QStringList faultsWhileTyping(QQuickWindow& window, const Measures& by) {
    if (isUnder(window.activeFocusItem(), "QQuickPopupItem"))
        return {};
    std::vector<QQuickItem*> targets;
    gather(*window.contentItem(), targets);
    std::vector<QPointer<QQuickItem>> fields; // what is typed may take one away
    std::ranges::copy_if(targets, std::back_inserter(fields), [](const QQuickItem* target) {
        return isField(*target) && !target->property("readOnly").toBool();
    });
    QStringList faults;
    for (const auto& field : fields) {
        if (field == nullptr)
            continue;
        const QString words = wordsOf(*field);
        field->forceActiveFocus();
        QTest::keyClick(&window, Qt::Key_X);
        QTest::qWait(20);
        for (const QString& fault : faultsOf(window, by))
            faults += QStringLiteral("typing into \"%1\": %2").arg(words, fault);
        QTest::keyClick(&window, Qt::Key_Backspace); // the page is as it was
    }
    return faults;
}

} // namespace undercowl::looks
