#include "tests/qml/style/typist.h"

#include <QQmlEngine>
#include <QtQml/qqmlextensionplugin.h>
#include <QtQuickTest>

Q_IMPORT_QML_PLUGIN(Undercowl_StylePlugin)

class Setup : public QObject {
    Q_OBJECT

public slots:
    void qmlEngineAvailable(QQmlEngine* engine) {
        engine->addImportPath("qrc:/qt/qml");
        qmlRegisterSingletonInstance("Undercowl.Test", 1, 0, "Typist", &typist_);
    }

private:
    Typist typist_;
};

QUICK_TEST_MAIN_WITH_SETUP(style, Setup)

#include "main.moc"
