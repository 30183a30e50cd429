// Where the actions stand: the main one under the thumb of the hand that holds the phone, and beside what is
// read where a phone that lies on its side has no room for them below.
#include "appwindow.h"

#include <QtQml/qqmlextensionplugin.h>

Q_IMPORT_QML_PLUGIN(Undercowl_StylePlugin)
Q_IMPORT_QML_PLUGIN(UndercowlPlugin)

using namespace undercowl;
using namespace undercowl::ui;

namespace {

QRectF placeOf(const AppWindow& app, const QString& words) {
    const QQuickItem* item = app.button(words);
    if (item == nullptr)
        qFatal("no button \"%s\"", qPrintable(words));
    return item->mapRectToScene({0, 0, item->width(), item->height()});
}

} // namespace

class HandTest : public QObject {
    Q_OBJECT

private slots:
    void mainActionIsUnderTheThumb_data() {
        QTest::addColumn<QString>("page");
        QTest::addColumn<QString>("main");
        QTest::addColumn<QString>("other");
        QTest::newRow("measure") << "MeasurePage"
                                 << "Keep"
                                 << "Again";
        QTest::newRow("look over") << "LookOverPage"
                                   << "Finding"
                                   << "Photo as found";
        QTest::newRow("strip") << "StripPage"
                               << "Next step"
                               << "Photo";
    }
    void mainActionIsUnderTheThumb() {
        QFETCH(QString, page);
        QFETCH(QString, main);
        QFETCH(QString, other);
        const auto session = shop_.session();
        for (const bool left : {false, true}) {
            session->set(QStringLiteral("hand"), left ? QStringLiteral("left") : QStringLiteral("right"));
            AppWindow app(*session, {360, 640});
            app.show(page.toLatin1());
            QTRY_VERIFY(app.button(main) != nullptr);
            QTest::qWait(50);
            const QRectF thumb = placeOf(app, main);
            const QRectF beside = placeOf(app, other);
            QCOMPARE(thumb.top(), beside.top());
            QVERIFY(left ? thumb.right() < beside.left() : beside.right() < thumb.left());
        }
    }

    // A phone that lies on its side: value, keys and what keeps them are all seen, none over another.
    void keypadStandsBesideTheValue_data() {
        QTest::addColumn<QSize>("size");
        QTest::addColumn<bool>("left");
        QTest::newRow("small") << QSize(640, 360) << false;
        QTest::newRow("small, left") << QSize(640, 360) << true;
        QTest::newRow("large") << QSize(915, 412) << false;
    }
    void keypadStandsBesideTheValue() {
        QFETCH(QSize, size);
        QFETCH(bool, left);
        const auto session = shop_.session();
        session->set(QStringLiteral("hand"), left ? QStringLiteral("left") : QStringLiteral("right"));
        AppWindow app(*session, size);
        app.show("MeasurePage");
        QTRY_VERIFY(app.button(QStringLiteral("Keep")) != nullptr);
        QTest::qWait(50);
        const QRectF window({0, 0}, QSizeF(size));
        const QRectF keep = placeOf(app, QStringLiteral("Keep"));
        const QRectF unit = placeOf(app, QStringLiteral("N.m"));
        QVERIFY(window.contains(keep));
        QVERIFY(window.contains(unit));
        QVERIFY(keep.height() >= 96); // 15 mm
        QCOMPARE(placeOf(app, QStringLiteral("2")).top() - placeOf(app, QStringLiteral("5")).top(),
                 placeOf(app, QStringLiteral("5")).top() - placeOf(app, QStringLiteral("8")).top());
        QVERIFY(placeOf(app, QStringLiteral("5")).top() - placeOf(app, QStringLiteral("2")).bottom() >=
                13); // 2 mm
        for (int digit = 0; digit < 10; ++digit) {
            const QRectF key = placeOf(app, QString::number(digit));
            QVERIFY2(window.contains(key), qPrintable(QString::number(digit)));
            QVERIFY(key.height() >= (size.height() < 412 ? 63 : 83)); // 10 and 13 mm
            QVERIFY(!key.intersects(keep));
            QVERIFY(left ? key.right() < unit.left() : unit.right() < key.left());
        }
    }

private:
    LiftShop shop_;
};

QTEST_MAIN(HandTest)
#include "hand_test.moc"
