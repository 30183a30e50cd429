// How long the screens of a test take no touch after what they show has changed.
#pragma once

#include <QQmlComponent>
#include <QQmlEngine>

#include <memory>

namespace undercowl::ui {

// In milliseconds; 0: not at all, for a test that knows what comes and touches it without looking at it
// first.
inline void settleFor(QQmlEngine& engine, int ms) {
    QQmlComponent told(&engine);
    told.setData("import QtQml\nimport Undercowl.Style\nQtObject { Component.onCompleted: Theme.settle = " +
                     QByteArray::number(ms) + " }",
                 {});
    const std::unique_ptr<QObject> made(told.create());
    if (made == nullptr)
        qFatal("%s", qPrintable(told.errorString()));
}

} // namespace undercowl::ui
