// The glass at the lift: locked, dim, under a palm or under water it does nothing that was not meant, and
// what it tells at its edge and by tones is what happened.
#include "appwindow.h"

#include "qml/strip/stripview.h"
#include "qml/style/glass.h"

#include <QAccessible>
#include <QSignalSpy>
#include <QtQml/qqmlextensionplugin.h>

#include <set>

Q_IMPORT_QML_PLUGIN(Undercowl_StylePlugin)
Q_IMPORT_QML_PLUGIN(UndercowlPlugin)

using namespace undercowl;
using namespace undercowl::ui;
using Signal = platform::Signaller::Signal;

namespace {

struct Lift {
    explicit Lift(const char* page, QSize size = {360, 640}) {
        session = shop.session();
        session->set(QStringLiteral("voice"), QStringLiteral("on"));
        app = std::make_unique<AppWindow>(*session, size);
        app->show(page);
        QTest::qWait(100);
    }

    [[nodiscard]] QPointF middle(const QString& words) const {
        const QQuickItem* item = app->button(words);
        if (item == nullptr)
            qFatal("no button \"%s\"", qPrintable(words));
        return item->mapToScene({item->width() / 2, item->height() / 2});
    }
    [[nodiscard]] bool locked() const { return app->button(QStringLiteral("Unlock")) != nullptr; }
    [[nodiscard]] StripView* strip() const { return app->view<StripView>(); }
    void key(Qt::Key key) const { QTest::keyClick(&app->window(), key); }
    // A screen reader's press on what has this name.
    [[nodiscard]] bool press(const QString& words) const {
        QAccessible::setActive(true);
        auto* reader = QAccessible::queryAccessibleInterface(app->button(words));
        if (reader == nullptr || reader->actionInterface() == nullptr)
            return false;
        reader->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
        QTest::qWait(20);
        return true;
    }
    // Colours that lie along the window's edge, a part of the way down its left side.
    [[nodiscard]] QColor edge(qreal down) const {
        const QImage picture = app->window().grabWindow();
        return picture.pixelColor(2, static_cast<int>((picture.height() - 1) * down));
    }

    LiftShop shop;
    std::unique_ptr<ShopSession> session;
    std::unique_ptr<AppWindow> app;
};

} // namespace

class GlassTest : public QObject {
    Q_OBJECT

private slots:
    void oneTouchLocksAndTwoInOppositeCornersUnlock() {
        const Lift lift("StripPage");
        QTRY_VERIFY(lift.strip() != nullptr && lift.strip()->begun());
        const QPointF more = lift.middle(QStringLiteral("More on this page"));
        QVERIFY(lift.app->touch(QStringLiteral("Lock the screen")));
        QTRY_VERIFY(lift.locked());
        // The actions are gone, what is shown stays, and nothing that is touched acts.
        QVERIFY(lift.app->button(QStringLiteral("Next step")) == nullptr);
        QVERIFY(lift.app->label(QStringLiteral("Strip")) != nullptr);
        QVERIFY(lift.app->touchAt(more));
        QTest::mouseClick(&lift.app->window(), Qt::LeftButton, {}, more.toPoint());
        for (const Qt::Key key : {Qt::Key_Escape, Qt::Key_Back, Qt::Key_A})
            lift.key(key);
        QTest::qWait(50);
        QVERIFY(lift.app->button(QStringLiteral("Steps so far")) == nullptr);
        QVERIFY(lift.strip() != nullptr);
        QVERIFY(lift.locked());
        // The first touch alone does not unlock, however often.
        QVERIFY(lift.app->button(QStringLiteral("Unlock now")) == nullptr);
        QVERIFY(lift.app->touch(QStringLiteral("Unlock")));
        QVERIFY(lift.app->touch(QStringLiteral("Unlock")));
        QVERIFY(lift.locked());
        const QPointF first = lift.middle(QStringLiteral("Unlock"));
        const QPointF second = lift.middle(QStringLiteral("Unlock now"));
        QVERIFY2(std::abs(first.x() - second.x()) > 120 && std::abs(first.y() - second.y()) > 400,
                 "the two targets are not in opposite corners");
        // What touches elsewhere in between is water: it begins anew.
        QVERIFY(lift.app->touchAt({180, 300}));
        QTRY_VERIFY(lift.app->button(QStringLiteral("Unlock now")) == nullptr);
        QVERIFY(lift.app->touch(QStringLiteral("Unlock")));
        QVERIFY(lift.app->touch(QStringLiteral("Unlock now")));
        QTRY_VERIFY(!lift.locked());
        QVERIFY(lift.app->button(QStringLiteral("Next step")) != nullptr);
        QVERIFY(lift.app->touchTool(QStringLiteral("Steps so far")));
        QTRY_VERIFY(lift.app->button(QStringLiteral("Next step")) == nullptr);
    }

    void bothTargetsAtOnceUnlockNothing() {
        const Lift lift("StripPage");
        QVERIFY(lift.app->touch(QStringLiteral("Lock the screen")));
        QVERIFY(lift.app->touch(QStringLiteral("Unlock")));
        QTest::qWait(350);
        QQuickWindow& window = lift.app->window();
        const QPoint first = lift.middle(QStringLiteral("Unlock")).toPoint();
        const QPoint second = lift.middle(QStringLiteral("Unlock now")).toPoint();
        QTest::touchEvent(&window, &lift.app->finger()).press(0, first, &window);
        QTest::touchEvent(&window, &lift.app->finger()).stationary(0).press(1, second, &window);
        QTest::qWait(20);
        QTest::touchEvent(&window, &lift.app->finger())
            .release(0, first, &window)
            .release(1, second, &window);
        QTest::qWait(50);
        QVERIFY(lift.locked());
    }

    void aLockedScreenIsWorkedByVoice() {
        const Lift lift("StripPage");
        QTRY_VERIFY(lift.strip() != nullptr && lift.strip()->begun());
        QVERIFY(lift.app->touch(QStringLiteral("Lock the screen")));
        QTRY_VERIFY(lift.locked());
        QVERIFY(lift.app->touch(QStringLiteral("Hold and speak")));
        QCOMPARE(lift.app->listener().state(), platform::Listener::State::Thinking);
        lift.app->listener().say("bag one two");
        QCOMPARE(lift.strip()->bag(), QStringLiteral("12"));
        QTRY_VERIFY(lift.app->label(QStringLiteral("Heard: bag 12")) != nullptr);
        lift.app->listener().say("photo");
        QTRY_VERIFY(lift.strip() == nullptr); // the camera's page, locked as well
        QTRY_VERIFY(lift.locked());
    }

    void theKeyboardUnlocksByTwoKeysAndNothingElse() {
        const Lift lift("StripPage");
        QVERIFY(lift.app->touch(QStringLiteral("Lock the screen")));
        QTRY_VERIFY(lift.locked());
        // Round among what is let through: the button that is held for speaking, and the first target.
        std::set<QString> reached;
        for (int i = 0; i < 6; ++i) {
            lift.key(i < 3 ? Qt::Key_Tab : Qt::Key_Backtab);
            reached.insert(lift.app->window().activeFocusItem()->property("text").toString());
        }
        QCOMPARE(reached, (std::set<QString>{QStringLiteral("Hold and speak"), QStringLiteral("Unlock")}));
        while (lift.app->window().activeFocusItem()->property("text").toString() != u"Unlock")
            lift.key(Qt::Key_Tab);
        lift.key(Qt::Key_Return);
        QTRY_COMPARE(lift.app->window().activeFocusItem()->property("text").toString(),
                     QStringLiteral("Unlock now"));
        QVERIFY(lift.locked());
        lift.key(Qt::Key_Return);
        QTRY_VERIFY(!lift.locked());
        lift.key(Qt::Key_Escape);
        QTRY_VERIFY(lift.strip() == nullptr);
    }

    void aScreenReaderUnlocksByTwoActions() {
        const Lift lift("StripPage");
        QVERIFY(lift.press(QStringLiteral("Lock the screen")));
        QTRY_VERIFY(lift.locked());
        // Not what lies under the lock, whatever asks for it.
        QVERIFY(lift.press(QStringLiteral("More on this page")));
        QVERIFY(lift.app->button(QStringLiteral("Steps so far")) == nullptr);
        QVERIFY(lift.strip() != nullptr);
        QVERIFY(lift.press(QStringLiteral("Unlock")));
        QVERIFY(lift.locked());
        QVERIFY(lift.press(QStringLiteral("Unlock now")));
        QTRY_VERIFY(!lift.locked());
    }

    void theLockIsSeenInTheCornersOfTheEdge() {
        const Lift lift("StripPage");
        const QColor before = lift.edge(0);
        QVERIFY(lift.app->touch(QStringLiteral("Lock the screen")));
        QTRY_VERIFY(lift.edge(0) != before);
        QVERIFY(lift.edge(1) != before);
        QCOMPARE(lift.edge(0.5), before);
    }

    void aPalmIsNoThumb() {
        const Lift lift("StripPage");
        QTRY_VERIFY(lift.strip() != nullptr && lift.strip()->begun());
        QTest::qWait(350);
        QQuickWindow& window = lift.app->window();
        const QPoint at = lift.middle(QStringLiteral("Bag")).toPoint();
        const auto touch = [&] { return QTest::touchEvent(&window, &lift.app->finger()); };
        // The thumb was there first; two more points come down, and all are lifted.
        touch().press(0, at, &window);
        touch().stationary(0).press(1, at - QPoint(60, 60), &window).press(2, at - QPoint(90, 10), &window);
        QTest::qWait(20);
        touch().release(0, at, &window).stationary(1).stationary(2);
        touch().release(1, at, &window).release(2, at, &window);
        QTest::qWait(50);
        QVERIFY(lift.app->label(QStringLiteral("Keep the bag")) == nullptr);
        // Two are a pinch: the first still counts.
        touch().press(0, at, &window);
        touch().stationary(0).press(1, QPoint(20, 300), &window);
        QTest::qWait(20);
        touch().release(0, at, &window).stationary(1);
        touch().release(1, QPoint(20, 300), &window);
        QTRY_VERIFY(lift.app->label(QStringLiteral("Keep the bag")) != nullptr);
    }

    void aLargeContactIsAPalm() {
        QVERIFY(!isPalmContact({60, 90}));  // a thumb laid down: 9 by 14 mm
        QVERIFY(!isPalmContact({90, 128})); // in a thick glove: 14 by 20 mm
        QVERIFY(isPalmContact({70, 200}));  // the edge of a hand
        QVERIFY(isPalmContact({200, 70}));
    }

    void aSecondTapOnThePageThatTheFirstOpenedDoesNothing() {
        const Lift lift("JobPage");
        QTest::qWait(350);
        const QPointF strip = lift.middle(QStringLiteral("Strip"));
        QVERIFY(lift.app->touchAt(strip));
        QTRY_VERIFY(lift.strip() != nullptr);
        const std::size_t steps = lift.shop.stored().steps.size();
        lift.strip()->setTitle(QStringLiteral("horn off"));
        QVERIFY(lift.app->touchAt(strip)); // sooner than a thumb means it
        QTest::qWait(350);
        QVERIFY(lift.strip() != nullptr);
        QCOMPARE(lift.shop.stored().steps.size(), steps);
    }

    void aDimScreenIsWokenByATouchThatDoesNothingElse() {
        const Lift lift("StripPage");
        QTRY_VERIFY(lift.strip() != nullptr && lift.strip()->begun());
        lift.session->set(QStringLiteral("theme"), QStringLiteral("day"));
        QTest::qWait(50);
        const QColor day = lift.edge(0.5);
        lift.session->set(QStringLiteral("dim-after"), QStringLiteral("0.005")); // 0.3 s
        QTRY_VERIFY(lift.edge(0.5).lightness() < day.lightness() / 4);           // a night look, and darker
        const QPointF bag = lift.middle(QStringLiteral("Bag"));
        lift.session->set(QStringLiteral("dim-after"), QStringLiteral("0.02"));
        // The setting is no touch of the glass, but whoever changes it looks at the screen.
        QTRY_COMPARE(lift.edge(0.5), day);
        QTRY_VERIFY_WITH_TIMEOUT(lift.edge(0.5) != day, 5000);
        QVERIFY(lift.app->touchAt(bag));
        QTRY_COMPARE(lift.edge(0.5), day);
        QVERIFY(lift.app->label(QStringLiteral("Keep the bag")) == nullptr);
        QTest::qWait(350);
        QVERIFY(lift.app->touchAt(bag));
        QTRY_VERIFY(lift.app->label(QStringLiteral("Keep the bag")) != nullptr);
        // By voice it wakes as well, and obeys at once.
        QTRY_VERIFY_WITH_TIMEOUT(lift.edge(0.5) != day, 5000);
        lift.app->listener().say("bag one two");
        QTRY_COMPARE(lift.edge(0.5), day);
        QCOMPARE(lift.strip()->bag(), QStringLiteral("12"));
    }

    void theScreenStaysOnWhileAJobIsOpen() {
        const Lift lift("StripPage");
        if (QGuiApplication::applicationState() != Qt::ApplicationActive)
            lift.app->window().requestActivate();
        QTRY_VERIFY(lift.app->screen().awake());
        lift.session->set(QStringLiteral("screen"), QStringLiteral("as the device"));
        QTRY_VERIFY(!lift.app->screen().awake());
        lift.session->set(QStringLiteral("screen"), QStringLiteral("stays on"));
        QTRY_VERIFY(lift.app->screen().awake());
        QVERIFY(lift.app->touch(QStringLiteral("Back"))); // to the list of jobs
        QTRY_VERIFY(!lift.app->screen().awake());
    }

    void whatHappenedIsHeardAndSeenAtTheEdge() {
        const Lift lift("StripPage");
        QTRY_VERIFY(lift.strip() != nullptr && lift.strip()->begun());
        const QColor bare = lift.edge(0.5);
        auto& given = lift.app->signaller().given;
        given.clear();
        lift.strip()->setTitle(QStringLiteral("horn off"));
        QVERIFY(lift.app->touch(QStringLiteral("Next step")));
        QTRY_COMPARE(given, QList<Signal>{Signal::Saved});
        QVERIFY(lift.edge(0) != bare);  // above
        QCOMPARE(lift.edge(0.5), bare); // not at the sides
        QTRY_COMPARE_WITH_TIMEOUT(lift.edge(0), bare, 4000);
        // The button that is held opens the microphone.
        QQuickWindow& window = lift.app->window();
        const QPoint speak = lift.middle(QStringLiteral("Hold and speak")).toPoint();
        QTest::touchEvent(&window, &lift.app->finger()).press(0, speak, &window);
        QTRY_COMPARE(given.size(), 2);
        QCOMPARE(given.back(), Signal::Listening);
        const auto sides = [&] {
            std::set<QRgb> colours;
            for (int i = 10; i < 90; ++i)
                colours.insert(lift.edge(i / 100.0).rgb());
            return colours.size();
        };
        QTRY_COMPARE(sides(), std::size_t{2}); // dashes
        QTest::touchEvent(&window, &lift.app->finger()).release(0, speak, &window);
        lift.app->listener().say("pass me the hammer");
        QTRY_VERIFY(lift.edge(0) != bare); // refused; the voice says so, and no tone
        QCOMPARE(given.size(), 2);
        lift.app->listener().say("memo");
        QTRY_COMPARE(given.back(), Signal::Recording);
        QTRY_COMPARE(sides(), std::size_t{1}); // unbroken
        QVERIFY(lift.edge(0.5) != bare);
        lift.session->set(QStringLiteral("sounds"), QStringLiteral("off"));
        const qsizetype before = given.size();
        QVERIFY(lift.app->touch(QStringLiteral("Stop")));
        QTRY_COMPARE(lift.edge(0.5), bare);
        QTest::qWait(300); // it is saved
        QCOMPARE(given.size(), before);
    }
};

QTEST_MAIN(GlassTest)
#include "glass_test.moc"
