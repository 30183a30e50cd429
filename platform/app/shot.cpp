#include "platform/app/shot.h"

#include <QCoreApplication>
#include <QImage>
#include <QTimer>

#include <cstdio>

namespace undercowl::platform {

void shootAndQuit(QQuickWindow& window, const QString& file, int settle) {
    QTimer::singleShot(settle, &window, [&window, file] {
        if (window.grabWindow().save(file)) {
            QCoreApplication::exit(0);
            return;
        }
        std::fprintf(stderr, "undercowl: cannot write the picture %s: does its folder exist?\n",
                     qPrintable(file));
        QCoreApplication::exit(2);
    });
}

} // namespace undercowl::platform
