// What both windows of the start bench do alike.
#pragma once

#include <QQuickWindow>

namespace undercowl::bench {

// Ends the process when the window's first frame has been shown; what started it is watching for that.
inline void endWithFirstFrame(QQuickWindow& window) {
    QObject::connect(
        &window, &QQuickWindow::frameSwapped, &window, [] { std::_Exit(0); }, Qt::DirectConnection);
}

} // namespace undercowl::bench
