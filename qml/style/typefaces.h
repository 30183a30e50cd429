// The open typefaces that travel in the program.
#pragma once

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// As the theme sees them. A face that cannot be read has the name anyway: Qt then takes the system's.
class Typefaces : public QObject {
    Q_OBJECT
    Q_PROPERTY(QString sans READ sans CONSTANT FINAL)
    Q_PROPERTY(QString mono READ mono CONSTANT FINAL)
    QML_ELEMENT
    QML_SINGLETON

public:
    explicit Typefaces(QObject* parent = nullptr);

    [[nodiscard]] static QString sans() { return QStringLiteral("Undercowl Sans"); }
    [[nodiscard]] static QString mono() { return QStringLiteral("Undercowl Mono"); }

    // Done once; needs a QGuiApplication. Before the first window where that can be: a font that comes later
    // makes every window lay out all its words again.
    static void load();
};

} // namespace undercowl::ui
