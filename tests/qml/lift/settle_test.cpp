// A touch that bounces, at the place of the first and a little later than a trembling thumb's: what has come
// up there meanwhile was never looked at, and nothing is said of it.
#include "appwindow.h"

#include "qml/prove/proveview.h"
#include "qml/refit/linebackview.h"
#include "qml/refit/readbackview.h"
#include "qml/refit/refitview.h"
#include "qml/rounds/functionsview.h"

#include <QElapsedTimer>
#include <QtQml/qqmlextensionplugin.h>

Q_IMPORT_QML_PLUGIN(Undercowl_StylePlugin)
Q_IMPORT_QML_PLUGIN(UndercowlPlugin)

using namespace undercowl;
using namespace undercowl::ui;

namespace {

constexpr int settle = 2500; // ms: longer than the app's, for machines on which a touch takes its time
constexpr int bounce = 400;  // later than the second tap that every button ignores

bool settled(const AppWindow& app, const QString& words) {
    return QTest::qWaitFor([&] {
        const QQuickItem* button = app.button(words);
        return button != nullptr && !button->property("settling").toBool();
    });
}

QPointF middleOf(const QQuickItem& item) {
    return item.mapToScene({item.width() / 2, item.height() / 2});
}

// Touches the button once it has settled, and again at the same place as soon as 'changed': long before that
// has settled. False when a touch was not as meant.
template<typename Changed>
bool touchTwice(AppWindow& app, const QString& words, const Changed& changed) {
    app.settles(settle);
    if (!QTest::qWaitFor([&] { return app.button(words) != nullptr; }) || !settled(app, words))
        return false;
    const QPointF at = middleOf(*app.button(words));
    QElapsedTimer since;
    (void)app.touchAt(at);
    since.start();
    if (!QTest::qWaitFor(changed))
        return false;
    QTest::qWait(std::max<int>(0, bounce - static_cast<int>(since.elapsed())));
    (void)app.touchAt(at);
    QTest::qWait(200); // what it did would be in the store by then
    return true;
}

QVariantMap gatheringOf(const LiftShop& shop) {
    return {{QStringLiteral("gathering"), QString::fromStdString(shop.gathering)}};
}

} // namespace

class SettleTest : public QObject {
    Q_OBJECT

private slots:
    void theNextStepIsNotRefittedUnseen() {
        const LiftShop shop;
        const auto session = shop.session();
        AppWindow app(*session);
        app.show("RefitPage");
        const auto* view = app.view<RefitView>();
        QVERIFY(view != nullptr);
        QCOMPARE(view->step(), QString::fromStdString(shop.lastStep));
        const auto next = [&] {
            return view->step() == QString::fromStdString(shop.step) && !view->saying();
        };
        QVERIFY(touchTwice(app, QStringLiteral("Refitted"), next));
        QVERIFY(job::findStep(shop.stored(), shop.lastStep)->refitted);
        QVERIFY(!job::findStep(shop.stored(), shop.step)->refitted);
        // Who has looked refits it.
        QVERIFY(settled(app, QStringLiteral("Refitted")));
        QVERIFY(app.touch(QStringLiteral("Refitted")));
        QTRY_VERIFY(job::findStep(shop.stored(), shop.step)->refitted);
    }

    void aWarningIsNotPassedOverUnseen() {
        const LiftShop shop;
        shop.answer();
        const auto session = shop.session();
        AppWindow app(*session);
        app.show("RefitPage", {{QStringLiteral("step"), QString::fromStdString(shop.step)}});
        const auto asked = [&] { return app.button(QStringLiteral("Refitted all the same")) != nullptr; };
        QVERIFY(touchTwice(app, QStringLiteral("Refitted"), asked));
        QVERIFY(!job::findStep(shop.stored(), shop.step)->refitted);
        QVERIFY(asked());
        const auto* risky = app.button(QStringLiteral("Refitted all the same"));
        (void)app.touchAt(middleOf(*risky)); // too early as well
        QTest::qWait(200);
        QVERIFY(!job::findStep(shop.stored(), shop.step)->refitted);
        QVERIFY(settled(app, QStringLiteral("Refitted all the same")));
        QVERIFY(app.touch(QStringLiteral("Refitted all the same")));
        QTRY_VERIFY(job::findStep(shop.stored(), shop.step)->refitted);
    }

    // However long the thumb lies there.
    void theSafeAnswerLiesUnderTheThumb() {
        const LiftShop shop;
        shop.answer();
        const auto session = shop.session();
        AppWindow app(*session);
        app.show("RefitPage", {{QStringLiteral("step"), QString::fromStdString(shop.step)}});
        QTRY_VERIFY(app.button(QStringLiteral("Refitted")) != nullptr);
        const QPointF at = middleOf(*app.button(QStringLiteral("Refitted")));
        (void)app.touchAt(at);
        QTRY_VERIFY(app.button(QStringLiteral("Refitted all the same")) != nullptr);
        QTest::qWait(bounce);
        (void)app.touchAt(at);
        QTRY_VERIFY(app.label(QStringLiteral("Read wires back")) != nullptr);
        QVERIFY(!job::findStep(shop.stored(), shop.step)->refitted);
    }

    void theNextWireDoesNotMatchUnseen() {
        const LiftShop shop;
        shop.answer();
        const auto session = shop.session();
        AppWindow app(*session);
        app.show("ReadBackPage", gatheringOf(shop));
        const auto* view = app.view<ReadBackView>();
        QVERIFY(view != nullptr);
        QVERIFY(touchTwice(app, QStringLiteral("Matches"), [&] { return view->index() == 1; }));
        QCOMPARE(view->index(), 1);
        QCOMPARE(shop.stored().wireChecks.size(), std::size_t{1});
        // Nor what comes up when a wire does not: here a photo would be.
        const auto written = [&] { return view->mismatch() && !view->saying(); };
        QVERIFY(touchTwice(app, QStringLiteral("Does not match"), written));
        QVERIFY(view->mismatch());
        QCOMPARE(view->index(), 1);
        // Nor "Matches", where "Look again" was.
        QVERIFY(touchTwice(app, QStringLiteral("Look again"), [&] { return !view->mismatch(); }));
        QCOMPARE(shop.stored().wireChecks.back().outcome, job::MatchOutcome::DoesNotMatch);
    }

    void theNextWireDoesNotMatchByAWordForTheOneBefore() {
        const LiftShop shop;
        shop.answer();
        const auto session = shop.session();
        session->set(QStringLiteral("voice"), QStringLiteral("on"));
        AppWindow app(*session);
        app.show("ReadBackPage", gatheringOf(shop));
        const auto* view = app.view<ReadBackView>();
        QVERIFY(view != nullptr);
        app.settles(settle);
        QVERIFY(app.touch(QStringLiteral("Hold and speak")));
        app.listener().say("done");
        QTRY_COMPARE(view->index(), 1);
        app.listener().say("done");
        QTest::qWait(200);
        QCOMPARE(view->index(), 1);
        QVERIFY(app.label(QStringLiteral("This one has only just come up. Look at it, then say it again.")) !=
                nullptr);
        QVERIFY(settled(app, QStringLiteral("Matches")));
        app.listener().say("done");
        QTRY_COMPARE(view->index(), 2);
    }

    void theNextHoseDoesNotRunAsItDidUnseen() {
        const LiftShop shop;
        for (const char* title : {"fuel hose off", "clutch cable off"}) {
            job::StripStep step;
            step.id = journal::newId(1);
            step.task = shop.task;
            step.title = title;
            shop.say(journal::stepStripped(shop.job, step));
        }
        const auto session = shop.session();
        AppWindow app(*session);
        app.show("LineBackPage");
        const auto* view = app.view<LineBackView>();
        QVERIFY(view != nullptr);
        QCOMPARE(view->count(), 2);
        QVERIFY(touchTwice(app, QStringLiteral("Matches"), [&] { return view->index() == 1; }));
        QCOMPARE(view->index(), 1);
        QCOMPARE(view->matching(), 1);
    }

    void theNextProofIsNotGivenUnseen() {
        const LiftShop shop;
        shop.say(journal::stepRefitted(shop.job, shop.lastStep));
        const auto session = shop.session();
        AppWindow app(*session);
        app.show("ProvePage");
        const auto* view = app.view<ProveView>();
        QVERIFY(view != nullptr);
        QVERIFY(view->count() > 1);
        const int open = view->open();
        QVERIFY(touchTwice(app, QStringLiteral("Proved"), [&] { return view->open() == open - 1; }));
        QCOMPARE(view->open(), open - 1);
    }

    void theNextFunctionDoesNotWorkUnseen() {
        const LiftShop shop;
        const auto session = shop.session();
        AppWindow app(*session);
        app.show("FunctionsPage");
        const auto* view = app.view<FunctionsView>();
        QVERIFY(view != nullptr);
        QTRY_VERIFY(view->count() > 2);
        const int open = view->open();
        QVERIFY(touchTwice(app, QStringLiteral("Works"), [&] { return view->open() == open - 1; }));
        QCOMPARE(view->open(), open - 1);
    }
};

QTEST_MAIN(SettleTest)
#include "settle_test.moc"
