// An empty Qt Quick Controls window, up to its first frame.
#include "tests/bench/first_frame.h"

#include <QGuiApplication>
#include <QQmlApplicationEngine>

int main(int argc, char* argv[]) {
    const QGuiApplication app(argc, argv);
    QQmlApplicationEngine engine;
    engine.loadData("import QtQuick.Controls\nApplicationWindow { visible: true; width: 412; height: 915 }");
    auto* window =
        engine.rootObjects().isEmpty() ? nullptr : qobject_cast<QQuickWindow*>(engine.rootObjects().first());
    if (window == nullptr)
        return 2;
    undercowl::bench::endWithFirstFrame(*window);
    return QGuiApplication::exec();
}
