// The gallery shows every control there is, in every theme, without a complaint of the QML engine; and no
// mark of it is known by its colour alone.
#include "core/colour/difference.h"
#include "core/colour/vision.h"

#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQmlComponent>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTest>
#include <QtQml/qqmlextensionplugin.h>

#include <array>
#include <map>
#include <memory>
#include <set>

Q_IMPORT_QML_PLUGIN(Undercowl_StylePlugin)
Q_IMPORT_QML_PLUGIN(Undercowl_GalleryPlugin)

using namespace undercowl;

namespace {

QStringList complaints;

void listen(QtMsgType type, const QMessageLogContext& /*context*/, const QString& message) {
    if (type != QtDebugMsg && type != QtInfoMsg && !message.contains(QStringLiteral("propagateSizeHints")) &&
        !message.contains(
            QStringLiteral("none-such"))) // the picture that is shown as one that cannot be read
        complaints += message;
}

// The file names of what the object and everything in it is made of.
void collect(const QObject& object, std::set<QString>& names) {
    for (const QMetaObject* meta = object.metaObject(); meta != nullptr; meta = meta->superClass())
        names.insert(QString::fromLatin1(meta->className()).section(QStringLiteral("_QML"), 0, 0));
    for (const QObject* child : object.children())
        collect(*child, names);
    if (const auto* item = qobject_cast<const QQuickItem*>(&object); item != nullptr)
        for (const QQuickItem* child : item->childItems())
            if (child->parent() != &object)
                collect(*child, names);
}

struct Shown {
    explicit Shown(const QString& page, const QString& theme = QStringLiteral("night"), qreal scale = 1) {
        engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
        engine.setInitialProperties({{QStringLiteral("page"), page},
                                     {QStringLiteral("theme"), theme},
                                     {QStringLiteral("textScale"), scale}});
        engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Undercowl/Gallery/Gallery.qml")));
        window = engine.rootObjects().isEmpty() ? nullptr
                                                : qobject_cast<QQuickWindow*>(engine.rootObjects().first());
        if (window == nullptr)
            qFatal("the gallery was not made");
        (void)QTest::qWaitForWindowExposed(window);
        QTest::qWait(50);
    }

    QQmlApplicationEngine engine;
    QQuickWindow* window{};
};

QStringList pages() {
    const Shown shown(QStringLiteral("Actions"));
    return shown.window->property("pages").toStringList();
}

// A control by itself on the ground of the theme.
QImage drawn(const QByteArray& control, const QString& theme) {
    QQmlEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    QQmlComponent component(&engine);
    component.setData("import QtQuick\nimport Undercowl.Style\nAppWindow { width: 200; height: 120; visible: "
                      "true; theme: \"" +
                          theme.toUtf8() + "\"\n" + control + " }",
                      {});
    const std::unique_ptr<QObject> made(component.create());
    auto* window = qobject_cast<QQuickWindow*>(made.get());
    if (window == nullptr)
        qFatal("%s", qPrintable(component.errorString()));
    (void)QTest::qWaitForWindowExposed(window);
    QTest::qWait(60);
    return window->grabWindow();
}

// Where something is drawn at all, whatever its colour.
QImage shape(const QImage& picture) {
    QImage drawing(picture.size(), QImage::Format_Grayscale8);
    const QRgb ground = picture.pixel(picture.width() / 2, picture.height() - 20);
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 0; x < picture.width(); ++x) {
            const int away = std::abs(qGray(picture.pixel(x, y)) - qGray(ground));
            drawing.setPixelColor(x, y, away > 40 ? Qt::white : Qt::black);
        }
    return drawing;
}

int differing(const QImage& one, const QImage& other) {
    int count = 0;
    for (int y = 0; y < one.height(); ++y)
        for (int x = 0; x < one.width(); ++x)
            count += one.pixel(x, y) != other.pixel(x, y) ? 1 : 0;
    return count;
}

} // namespace

class GalleryTest : public QObject {
    Q_OBJECT

private slots:
    void everyControlIsShown() {
        std::set<QString> shown;
        for (const QString& page : pages()) {
            const Shown gallery(page);
            collect(*gallery.window, shown);
            if (page == u"Photos") { // a tap shows the photo large
                QTest::mouseClick(gallery.window, Qt::LeftButton, {}, {180, 160});
                QTest::qWait(300);
                collect(*gallery.window, shown);
            }
        }
        QStringList missing;
        const QStringList controls = QStringLiteral(UNDERCOWL_CONTROLS).split(u' ');
        QVERIFY(controls.size() > 30);
        for (const QString& control : controls)
            if (!shown.contains(control.section(u'.', 0, 0)) && control != u"Theme.qml") // no control
                missing += control;
        QVERIFY2(missing.isEmpty(), qPrintable(missing.join(u' ')));
    }

    void noPageComplains() {
        for (const QString& page : pages())
            for (const char* theme : {"night", "day", "sun"})
                for (const qreal scale : {1.0, 2.0}) {
                    complaints.clear();
                    const auto before = qInstallMessageHandler(listen);
                    {
                        const Shown gallery(page, QString::fromLatin1(theme), scale);
                        (void)gallery.window->grabWindow();
                    }
                    qInstallMessageHandler(before);
                    QVERIFY2(complaints.isEmpty(),
                             qPrintable(page + QStringLiteral(": ") + complaints.join(QStringLiteral("\n"))));
                }
    }

    void marksAreKnownByTheirShape_data() {
        QTest::addColumn<QByteArrayList>("controls");
        const auto row = [](const char* name, const QByteArray& before, const QByteArrayList& values,
                            const QByteArray& after) {
            QByteArrayList controls;
            for (const QByteArray& value : values)
                controls += before + value + after;
            QTest::newRow(name) << controls;
        };
        // The mark alone: of what has words beside it only the first 40 dp are looked at.
        row("severity", "SeverityMark { severity: \"", {"unsafe", "soon", "note"}, "\" }");
        row("verdict", "VerdictMark { width: 200; verdict: \"", {"within", "undecided", "outside"}, "\" }");
        row("edge", "EdgeStrip { anchors.fill: parent; ",
            {"", "sound: \"recording\"", "sound: \"listening\"", "sound: \"waiting\"", "told: \"saved\"",
             "told: \"refused\"", "locked: true"},
            " }");
    }

    void marksAreKnownByTheirShape() {
        QFETCH(const QByteArrayList, controls);
        for (const char* theme : {"night", "day", "sun"}) {
            std::vector<QImage> shapes;
            for (const QByteArray& control : controls) {
                const QImage all = shape(drawn(control, QString::fromLatin1(theme)));
                shapes.push_back(control.startsWith("Edge") ? all : all.copy(0, 0, 56, 100));
            }
            for (std::size_t i = 0; i < shapes.size(); ++i)
                for (std::size_t k = i + 1; k < shapes.size(); ++k) {
                    const int many = differing(shapes[i], shapes[k]);
                    QVERIFY2(many > 30, qPrintable(QStringLiteral("%1 and %2 differ by %3 dots")
                                                       .arg(QString::fromUtf8(controls[static_cast<int>(i)]),
                                                            QString::fromUtf8(controls[static_cast<int>(k)]))
                                                       .arg(many)));
                }
        }
    }

    // The main action stands out from caution and refusal by its colour too, whoever looks: simulation by
    // Machado, Oliveira and Fernandes 2009 (core/colour/vision.h). Caution and stop come as near as 2 to one
    // another for who sees little green: they are told apart by the shapes above alone, and that is why these
    // are held.
    void theMainActionStandsOutForEverybody() {
        QQmlEngine engine;
        engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
        QQmlComponent component(&engine);
        component.setData("import QtQuick\nimport Undercowl.Style\nQtObject { property QtObject night: "
                          "Theme.night; property QtObject "
                          "day: Theme.day; property QtObject sun: Theme.sun }",
                          {});
        const std::unique_ptr<QObject> made(component.create());
        QVERIFY2(made != nullptr, qPrintable(component.errorString()));
        for (const char* theme : {"night", "day", "sun"}) {
            const auto* tokens = made->property(theme).value<QObject*>();
            QVERIFY(tokens != nullptr);
            const auto token = [tokens](const char* name) {
                const auto tone = tokens->property(name).value<QColor>();
                return colour::toLab(colour::Srgb8{static_cast<std::uint8_t>(tone.red()),
                                                   static_cast<std::uint8_t>(tone.green()),
                                                   static_cast<std::uint8_t>(tone.blue())});
            };
            for (const auto deficiency : {colour::Deficiency::None, colour::Deficiency::Protan,
                                          colour::Deficiency::Deutan, colour::Deficiency::Tritan})
                for (const char* other : {"caution", "stop", "raised", "panel", "ground"}) {
                    const double far = colour::differenceAsSeen(token("act"), token(other), {deficiency, 1});
                    QVERIFY2(far > 7, qPrintable(QStringLiteral("%1: act and %2 as %3 sees them: %4")
                                                     .arg(QLatin1String(theme), QLatin1String(other))
                                                     .arg(static_cast<int>(deficiency))
                                                     .arg(far)));
                }
        }
    }
};

QTEST_MAIN(GalleryTest)
#include "gallery_test.moc"
