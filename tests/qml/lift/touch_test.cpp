// The screens at the lift by touch alone: what is touched is what is seen, what is checked is the store.
#include "appwindow.h"

#include "qml/calc/calcview.h"
#include "qml/refit/readbackview.h"
#include "qml/strip/stripview.h"
#include "qml/wiring/strokeview.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QtQml/qqmlextensionplugin.h>

#include <algorithm>

Q_IMPORT_QML_PLUGIN(Undercowl_StylePlugin)
Q_IMPORT_QML_PLUGIN(UndercowlPlugin)

using namespace undercowl;
using namespace undercowl::ui;

namespace {

constexpr int patience = 30000;

QVariantMap of(const LiftShop& shop) {
    return {{QStringLiteral("gathering"), QString::fromStdString(shop.gathering)}};
}

std::size_t found(const LiftShop& shop) {
    return wiring::placesOf(shop.stored().gatherings[0], wiring::Half::Loom, wiring::Answer::AsFound).size();
}

// Places that somebody looked at and found no wire in.
std::size_t empty(const LiftShop& shop) {
    const auto held = shop.stored().gatherings[0].held;
    return static_cast<std::size_t>(std::count_if(held.begin(), held.end(), [](const wiring::Place& place) {
        return place.saidEmpty(wiring::Answer::AsFound);
    }));
}

// The demo's stroke in pixels of its photo.
QList<QPointF> demoStroke() {
    QFile file(QStringLiteral(UNDERCOWL_PHOTOS "/wiring.json"));
    if (!file.open(QIODevice::ReadOnly))
        qFatal("no wiring.json");
    QList<QPointF> points;
    for (const QJsonValue& value :
         QJsonDocument::fromJson(file.readAll()).object()[u"before"][u"along"].toArray())
        points.append(QPointF(value.toArray().at(0).toDouble(), value.toArray().at(1).toDouble()));
    return points;
}

} // namespace

class TouchTest : public QObject {
    Q_OBJECT

private slots:
    void aCalculationIsEnteredKeyByKey() {
        const LiftShop shop;
        const auto session = shop.session();
        AppWindow app(*session);
        app.show("CalcPage", {{QStringLiteral("name"), QStringLiteral("premix")}});
        auto* view = app.view<CalcView>();
        QVERIFY(view != nullptr);
        for (const char* words : {"Fuel", "6", "Next", "5", "0", "Next"})
            QVERIFY2(app.touch(QString::fromLatin1(words)), words);
        QCOMPARE(view->key(), QString());
        QTRY_COMPARE(view->results()->count(), 3);
        QCOMPARE(view->results()->lines()[0].aside, QStringLiteral("120 mL"));
    }

    void aThumbStrokesConfirmsAndUndoes() {
        const LiftShop shop;
        const auto session = shop.session();
        AppWindow app(*session);
        app.show("StrokePage", of(shop));
        auto* view = app.view<StrokeView>();
        QVERIFY(view != nullptr);
        QTRY_COMPARE_WITH_TIMEOUT(view->reader()->state(), PhotoReader::State::Ready, patience);
        const QSize photo = view->reader()->size();
        auto* frame = app.having("drawn");
        QVERIFY(frame != nullptr);
        QTest::qWait(300); // the picture is decoded off the touch thread
        // All of the photo is shown, in the middle of the frame.
        const qreal scale = std::min(frame->width() / photo.width(), frame->height() / photo.height());
        const QPointF origin = frame->mapToScene(
            {(frame->width() - scale * photo.width()) / 2, (frame->height() - scale * photo.height()) / 2});
        QList<QPointF> along;
        for (const QPointF& point : demoStroke())
            along.append(origin + point * scale);
        app.drag(along);
        QTRY_VERIFY_WITH_TIMEOUT(view->rows()->count() > 1, patience);
        QCOMPARE(found(shop), std::size_t{0});

        QVERIFY(app.touch(view->wire()[QStringLiteral("sure")].toBool() ? QStringLiteral("Confirm")
                                                                        : QStringLiteral("It is")));
        QTRY_COMPARE(found(shop), std::size_t{1});
        QCOMPARE(view->current(), 1);
        QVERIFY(app.touch(QStringLiteral("Other colour")));
        QVERIFY(app.touch(QStringLiteral("violet")));
        QVERIFY(app.touch(QStringLiteral("no tracer")));
        QTRY_COMPARE(found(shop), std::size_t{2});
        QVERIFY(app.touch(QStringLiteral("Undo")));
        QTRY_COMPARE(found(shop), std::size_t{1});
        QVERIFY(app.touch(QStringLiteral("More")));
        QVERIFY(app.touch(QStringLiteral("This place is empty")));
        QTRY_COMPARE(view->rows()->openCount(), view->rows()->count() - 2);
        QTRY_COMPARE(empty(shop), std::size_t{1});
        QVERIFY(app.touch(QStringLiteral("Undo")));
        QTRY_COMPARE(empty(shop), std::size_t{0});
        QTRY_COMPARE(view->rows()->openCount(), view->rows()->count() - 1);
        QCOMPARE(found(shop), std::size_t{1});
    }

    void aStepIsStrippedByThumbAndKeys() {
        const LiftShop shop;
        const auto session = shop.session();
        AppWindow app(*session);
        app.show("StripPage");
        QTRY_VERIFY(app.view<StripView>() != nullptr && app.view<StripView>()->begun());
        QVERIFY(app.touch(QStringLiteral("Bag")));
        QVERIFY(app.touch(QStringLiteral("1")));
        QVERIFY(app.touch(QStringLiteral("2")));
        QVERIFY(app.touch(QStringLiteral("Keep the bag")));
        QVERIFY(app.touch(QStringLiteral("Held by")));
        QVERIFY(app.touch(QStringLiteral("2")));
        QVERIFY(app.touch(QStringLiteral("screw")));
        QVERIFY(app.touch(QStringLiteral("M5")));
        QVERIFY(app.touch(QStringLiteral("Add")));
        QTRY_COMPARE(app.view<StripView>()->hardware()->count(), 1);
        // The next begins anew, and shows that it does.
        QVERIFY(app.touch(QStringLiteral("Held by")));
        QVERIFY(!app.button(QStringLiteral("2"))->property("chosen").toBool());
        QVERIFY(app.button(QStringLiteral("1"))->property("chosen").toBool());
        QVERIFY(!app.button(QStringLiteral("M5"))->property("chosen").toBool());
        QVERIFY(app.touch(QStringLiteral("Close")));
        // Nothing was typed yet: the step is refused and says what is missing.
        QVERIFY(app.touch(QStringLiteral("Next step")));
        QVERIFY(!app.view<StripView>()->errors().isEmpty());
        QCOMPARE(shop.stored().steps.size(), std::size_t{2});
        auto* field = app.field(QStringLiteral("unplug 6-place connector"));
        QVERIFY(field != nullptr);
        (void)app.touchAt(field->mapToScene({field->width() / 2, field->height() / 2}));
        for (const char letter : std::string_view("horn off"))
            QTest::keyClick(&app.window(), letter);
        QVERIFY(app.touch(QStringLiteral("Next step")));
        QTRY_COMPARE(shop.stored().steps.size(), std::size_t{3});
        const auto step = shop.stored().steps.back();
        QCOMPARE(step.title, std::string("horn off"));
        QCOMPARE(step.bag, std::string("12"));
        QCOMPARE(step.hardware.at(0).count, 2);
        QVERIFY(app.touch(QStringLiteral("Undo")));
        QTRY_COMPARE(shop.stored().steps.size(), std::size_t{2});
    }

    void theWayBackLeavesAPanelFirst() {
        const LiftShop shop;
        const auto session = shop.session();
        AppWindow app(*session);
        app.show("StripPage");
        QVERIFY(app.touch(QStringLiteral("Bag")));
        QTRY_VERIFY(app.label(QStringLiteral("Keep the bag")) != nullptr);
        QVERIFY(app.touch(QStringLiteral("Back")));
        QTRY_VERIFY(app.button(QStringLiteral("Next step")) != nullptr);
        QVERIFY(app.touch(QStringLiteral("Bag")));
        QTest::keyClick(&app.window(), Qt::Key_Escape);
        QTRY_VERIFY(app.button(QStringLiteral("Next step")) != nullptr);
        QTest::keyClick(&app.window(), Qt::Key_Escape);
        QTRY_VERIFY(app.button(QStringLiteral("Next step")) == nullptr);
    }

    void whatIsWrongComesIntoView() {
        const LiftShop shop;
        const auto session = shop.session();
        AppWindow app(*session);
        app.show("TakeInPage");
        auto* scroller = app.having("contentY");
        QVERIFY(scroller != nullptr);
        const double end = scroller->property("contentHeight").toDouble() - scroller->height();
        QVERIFY(end > scroller->height());
        scroller->setProperty("contentY", end);
        QVERIFY(app.touch(QStringLiteral("Open the job")));
        QTRY_VERIFY(scroller->property("contentY").toDouble() < end);
        const QQuickItem* fault = app.label(QStringLiteral("Type why it is here, such as \"no lights\"."));
        QVERIFY(fault != nullptr);
        const double at = fault->mapToItem(scroller, {}).y();
        QVERIFY2(at > 0 && at + fault->height() < scroller->height(), qPrintable(QString::number(at)));
    }

    void whatIsWrongIsNotToldAnyMoreOnceItIsTypedOtherwise() {
        const LiftShop shop;
        const auto session = shop.session();
        AppWindow app(*session);
        app.show("FindingPage");
        auto* field = app.field(QStringLiteral("front brake hose cracked at the banjo"));
        QVERIFY(field != nullptr);
        QVERIFY(app.touch(QStringLiteral("Keep")));
        const auto fault = QStringLiteral("Type what was found, such as \"brake hose cracked\".");
        QTRY_VERIFY(app.label(fault) != nullptr);
        (void)app.touchAt(field->mapToScene({field->width() / 2, field->height() / 2}));
        QTest::keyClick(&app.window(), 'x');
        QTRY_VERIFY(app.label(fault) == nullptr);
    }

    void theWiresAreReadBackByThumb() {
        const LiftShop shop;
        shop.answer();
        const auto session = shop.session();
        AppWindow app(*session);
        app.show("ReadBackPage", of(shop));
        auto* view = app.view<ReadBackView>();
        QVERIFY(view != nullptr);
        QVERIFY(app.touch(QStringLiteral("Matches")));
        QTRY_COMPARE(view->index(), 1);
        QVERIFY(app.touch(QStringLiteral("Does not match")));
        QTRY_VERIFY(view->mismatch());
        QVERIFY(app.touch(QStringLiteral("Swapped")));
        QVERIFY(app.touch(QStringLiteral("place 3")));
        QTRY_COMPARE(shop.stored().wireChecks.back().note, std::string("swapped with place 3"));
        QVERIFY(app.touch(QStringLiteral("Next one")));
        QVERIFY(app.touch(QStringLiteral("Matches")));
        QTRY_VERIFY(view->over());
        QCOMPARE(view->matching(), 2);
        QCOMPARE(view->failing(), 1);
        QVERIFY(app.button(QStringLiteral("Compare photos")) != nullptr);
        QVERIFY(app.touch(QStringLiteral("Finish")));
        QTRY_VERIFY(app.view<ReadBackView>() == nullptr);
    }

    void theWiresAreReadAloud() {
        const LiftShop shop;
        shop.answer();
        const auto session = shop.session();
        AppWindow app(*session);
        app.show("ReadBackPage", of(shop));
        const QStringList& said = app.speaker().said;
        QVERIFY(said.isEmpty()); // silent until it is asked
        QVERIFY(app.button(QStringLiteral("Say again")) == nullptr);
        QVERIFY(app.touch(QStringLiteral("Read aloud")));
        QTRY_COMPARE(said.size(), 1);
        QCOMPARE(said.back(), QStringLiteral("place one, green with white tracer"));
        QVERIFY(app.touch(QStringLiteral("Wire only")));
        QCOMPARE(said.back(), QStringLiteral("green with white tracer"));
        QVERIFY(app.touch(QStringLiteral("Slower")));
        QCOMPARE(said.back(), QStringLiteral("place one, green with white tracer"));
        QVERIFY(app.speaker().slownesses.back() > app.speaker().slownesses.front());
        QVERIFY(app.touch(QStringLiteral("Say again")));
        QVERIFY(app.speaker().slownesses.back() > app.speaker().slownesses.front());
        QVERIFY(!session->setting(QStringLiteral("slowness")).isEmpty());
        // Done speaks the next one by itself, with the warning of its twin.
        QVERIFY(app.touch(QStringLiteral("Matches")));
        QTRY_COMPARE(said.back(), QStringLiteral("place two, grey, careful, it looks like place three"));
        QVERIFY(app.speaker().speaking());
        const qsizetype count = said.size();
        QVERIFY(app.touch(QStringLiteral("Read silently")));
        QVERIFY(!app.speaker().speaking());
        QVERIFY(app.touch(QStringLiteral("Skip")));
        QCOMPARE(said.size(), count);
    }

    void theWiresAreReadBackByVoice() {
        using State = platform::Listener::State;
        const LiftShop shop;
        shop.answer();
        const auto session = shop.session();
        AppWindow app(*session);
        app.show("ReadBackPage", of(shop));
        auto* view = app.view<ReadBackView>();
        QVERIFY(view != nullptr);
        QVERIFY(app.touch(QStringLiteral("Read aloud")));
        // Holding listens, letting go hears.
        QVERIFY(app.button(QStringLiteral("Hold and speak")) != nullptr);
        QVERIFY(app.touch(QStringLiteral("Hold and speak")));
        QCOMPARE(app.listener().state(), State::Thinking);
        app.listener().say("done");
        QTRY_COMPARE(view->index(), 1);
        QCOMPARE(shop.stored().wireChecks.size(), std::size_t{1});
        QCOMPARE(app.speaker().said.back(),
                 QStringLiteral("place two, grey, careful, it looks like place three"));
        // What is not understood, and what has no meaning here, changes nothing and says so.
        for (const char* words : {"pass me the hammer", "bag seven", "photo", "grey with red tracer"}) {
            app.listener().say(words);
            QCOMPARE(app.speaker().said.back(), QStringLiteral("say it again"));
            QCOMPARE(view->index(), 1);
            QCOMPARE(shop.stored().wireChecks.size(), std::size_t{1});
        }
        app.listener().say("next");
        QCOMPARE(view->index(), 2);
        app.listener().say("back");
        QCOMPARE(view->index(), 1);
        app.listener().say("does not match");
        QTRY_VERIFY(!view->saying());
        QVERIFY(view->mismatch());
        QCOMPARE(shop.stored().wireChecks.size(), std::size_t{2});
        app.listener().say("undo");
        QTRY_COMPARE(shop.stored().wireChecks.size(), std::size_t{1});
        const qsizetype count = app.speaker().said.size();
        app.listener().say("slower");
        QCOMPARE(app.speaker().said.size(), count + 1);
        QVERIFY(app.speaker().slownesses.back() > 0);
        app.listener().say("stop");
        QTRY_VERIFY(!app.speaker().speaking());
    }

    void fromTheStripStepToTheWiresAndBack() {
        const LiftShop shop;
        const auto session = shop.session();
        AppWindow app(*session);
        app.show("StripPage");
        QTRY_VERIFY(app.view<StripView>() != nullptr && app.view<StripView>()->begun());
        QVERIFY(app.touch(QStringLiteral("Wires")));
        QVERIFY(app.touch(QStringLiteral("New connector")));
        auto* field = app.field(QStringLiteral("right switch cluster"));
        QVERIFY(field != nullptr);
        (void)app.touchAt(field->mapToScene({field->width() / 2, field->height() / 2}));
        for (const char letter : std::string_view("horn plug"))
            QTest::keyClick(&app.window(), letter);
        QVERIFY(app.touch(QStringLiteral("Loose terminals")));
        QVERIFY(app.touch(QStringLiteral("3")));
        QVERIFY(app.touch(QStringLiteral("Keep")));
        QTRY_COMPARE(shop.stored().gatherings.size(), std::size_t{2});
        const auto gathering = shop.stored().gatherings.back();
        QCOMPARE(gathering.title, std::string("horn plug"));
        QCOMPARE(gathering.places, 3);
        QCOMPARE(gathering.kind, wiring::GatheringKind::LooseTerminals);
        QVERIFY(!gathering.step.empty()); // of the step that is not said yet
        QVERIFY(app.touch(QStringLiteral("Back")));
        QVERIFY(app.touch(QStringLiteral("Back")));
        QTRY_VERIFY(app.view<StripView>() != nullptr);
        QCOMPARE(app.view<StripView>()->wires()->count(), 1);
    }

    void theNextRefitStepIsTickedByThumb() {
        const LiftShop shop;
        const auto session = shop.session();
        AppWindow app(*session);
        app.show("RefitPage");
        const QQuickItem* below = app.button(QStringLiteral("Refitted"));
        QVERIFY(below != nullptr);
        const QPointF before = below->mapToScene({});
        QVERIFY(app.touch(QStringLiteral("Refitted")));
        QTRY_VERIFY(job::findStep(shop.stored(), shop.lastStep)->refitted.has_value());
        // A second touch on the same place meets the same button.
        QTRY_VERIFY(app.button(QStringLiteral("Undo")) != nullptr);
        below = app.button(QStringLiteral("Refitted"));
        QVERIFY(below != nullptr);
        QCOMPARE(below->mapToScene({}), before);
        QVERIFY(app.touch(QStringLiteral("Undo")));
        QTRY_VERIFY(!job::findStep(shop.stored(), shop.lastStep)->refitted.has_value());
    }

    void whatWasTypedOutlivesThePage_data() {
        QTest::addColumn<QByteArray>("page");
        QTest::addColumn<QString>("example");
        QTest::newRow("remark") << QByteArray("FunctionsPage") << QStringLiteral("flickers, only when cold");
        QTest::newRow("hand-over") << QByteArray("HandOverPage") << QStringLiteral("given back in a bag");
        QTest::newRow("proof") << QByteArray("ProvePage") << QStringLiteral("read aloud and matched");
    }

    void whatWasTypedOutlivesThePage() {
        QFETCH(const QByteArray, page);
        QFETCH(const QString, example);
        const LiftShop shop;
        shop.say(journal::stepRefitted(shop.job, shop.lastStep));
        {
            const auto session = shop.session();
            AppWindow app(*session);
            app.show(page, {});
            QTRY_VERIFY(app.field(example) != nullptr);
            app.field(example)->forceActiveFocus();
            for (const char letter : std::string_view("by hand"))
                QTest::keyClick(&app.window(), letter);
        }
        const auto session = shop.session();
        AppWindow app(*session);
        app.show(page, {});
        QTRY_VERIFY(app.field(example) != nullptr);
        QTRY_COMPARE(app.field(example)->property("text").toString(), QStringLiteral("by hand"));
    }
};

QTEST_MAIN(TouchTest)
#include "touch_test.moc"
