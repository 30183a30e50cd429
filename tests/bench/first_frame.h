// What the windows of the start bench do alike.
#pragma once

#include <QQuickItem>
#include <QQuickWindow>

#include <algorithm>

namespace undercowl::bench {

// Ends the process when the window's first frame has been shown; what started it is watching for that.
inline void endWithFirstFrame(QQuickWindow& window) {
    QObject::connect(
        &window, &QQuickWindow::frameSwapped, &window, [] { std::_Exit(0); }, Qt::DirectConnection);
}

inline bool listsJobs(const QQuickItem& item) {
    const auto children = item.childItems();
    return QLatin1String(item.metaObject()->className()).startsWith(QLatin1String("JobRow")) ||
           std::any_of(children.begin(), children.end(),
                       [](const QQuickItem* child) { return listsJobs(*child); });
}

// The same with the first frame that shows the machines in the shop.
inline void endWithTheList(QQuickWindow& window) {
    QObject::connect(
        &window, &QQuickWindow::frameSwapped, &window,
        [&window] {
            if (listsJobs(*window.contentItem()))
                std::_Exit(0);
        },
        Qt::DirectConnection);
}

} // namespace undercowl::bench
