// The screens at the lift by voice: what is said is what a thumb would have done, it is said back, and it
// can be undone. For wires and lines see wirestalk_test.cpp.
#include "talkinglift.h"

#include "qml/measure/measureview.h"
#include "qml/refit/refitview.h"
#include "qml/shell/formdraft.h"
#include "qml/strip/stripview.h"

#include <QtQml/qqmlextensionplugin.h>

Q_IMPORT_QML_PLUGIN(Undercowl_StylePlugin)
Q_IMPORT_QML_PLUGIN(UndercowlPlugin)

using namespace undercowl;
using namespace undercowl::ui;

namespace {

QString at(const QVariantMap& values, const char* name) {
    return values.value(QString::fromLatin1(name)).toString();
}

} // namespace

class TalkTest : public QObject {
    Q_OBJECT

private slots:
    void theButtonIsShownWhereItIsWanted() {
        const TalkingLift lift("StripPage");
        QVERIFY(lift.app->button(QStringLiteral("Hold and speak")) != nullptr);
        QVERIFY(lift.app->touchTool(QStringLiteral("Buttons only")));
        QTRY_VERIFY(lift.app->button(QStringLiteral("Hold and speak")) == nullptr);
        QVERIFY(lift.app->touchTool(QStringLiteral("Speak")));
        QTRY_VERIFY(lift.app->button(QStringLiteral("Hold and speak")) != nullptr);
        QCOMPARE(lift.session->setting(QStringLiteral("voice")), QStringLiteral("on"));
    }

    void aReadingIsShownSaidBackAndUndone() {
        const TalkingLift lift("MeasurePage");
        auto* view = lift.app->view<MeasureView>();
        QVERIFY(view != nullptr);
        QTRY_VERIFY(view->draft()->ready());
        lift.hear("torque two five newton metres");
        QCOMPARE(lift.said(), QStringLiteral("torque twenty five newton metres"));
        QVERIFY(lift.shows(QStringLiteral("Heard: torque 25\u00a0N.m")));
        QCOMPARE(at(view->draft()->values(), "value"), QStringLiteral("25"));
        QCOMPARE(view->unit(), QStringLiteral("N.m"));
        // Another quantity takes neither the name nor the unit of the one before.
        lift.hear("front tyre one point eight zero bar");
        QCOMPARE(at(view->draft()->values(), "what"), QStringLiteral("front tyre, pressure"));
        QCOMPARE(at(view->draft()->values(), "value"), QStringLiteral("1.80"));
        QVERIFY(view->unit().startsWith(QStringLiteral("bar")));
        QVERIFY(shopReadings(lift).empty()); // nothing is kept by hearing it
        lift.hear("undo");
        QCOMPARE(at(view->draft()->values(), "value"), QStringLiteral("25"));
        QCOMPARE(view->unit(), QStringLiteral("N.m"));
        lift.hear("battery twelve point six volts");
        QCOMPARE(view->unit(), QStringLiteral("V"));
        QVERIFY(lift.app->touch(QStringLiteral("Undo"))); // beside what was heard
        QCOMPARE(at(view->draft()->values(), "value"), QStringLiteral("25"));
        lift.hear("undo");
        QVERIFY(!view->draft()->begun());
        lift.hear("tread two point one millimetres");
        lift.hear("done");
        QTRY_COMPARE(shopReadings(lift).size(), std::size_t{1});
        QCOMPARE(shopReadings(lift)[0].what, std::string("tread, depth"));
        QCOMPARE(shopReadings(lift)[0].value, (job::TypedValue{"2.1", "mm"}));
        lift.hear("undo");
        QTRY_VERIFY(shopReadings(lift).empty());
    }

    void whatIsBelievedOfNothingIsNotTaken() {
        const TalkingLift lift("MeasurePage");
        auto* view = lift.app->view<MeasureView>();
        QTRY_VERIFY(view->draft()->ready());
        for (const char* words :
             {"front tyre nine bar", "bag seven", "grey with red tracer", "photo", "hand me that"}) {
            lift.hear(words);
            QCOMPARE(lift.said(), QStringLiteral("say it again"));
            QVERIFY(!view->draft()->begun());
        }
    }

    void theVerdictIsSaidToo() {
        const TalkingLift lift("MeasurePage");
        auto* view = lift.app->view<MeasureView>();
        QTRY_VERIFY(view->draft()->ready());
        view->draft()->set(QStringLiteral("what"), QStringLiteral("rear axle nut, torque"));
        view->draft()->set(QStringLiteral("low"), QStringLiteral("75"));
        view->draft()->set(QStringLiteral("high"), QStringLiteral("95"));
        view->draft()->set(QStringLiteral("trust"), 0);
        const QStringList instruments = view->instruments();
        const auto wrench = std::ranges::find_if(instruments, [](const QString& name) {
            return name.startsWith(QStringLiteral("torque-wrench-100"));
        });
        view->chooseInstrument(static_cast<int>(wrench - instruments.begin()));
        lift.hear("torque eighty five newton metres");
        QCOMPARE(at(view->draft()->values(), "what"), QStringLiteral("rear axle nut, torque"));
        QCOMPARE(lift.said(), QStringLiteral("torque eighty five newton metres, within"));
        lift.hear("torque six oh newton metres");
        QCOMPARE(lift.said(), QStringLiteral("torque sixty newton metres, outside"));
        // In another unit the limits keep theirs.
        lift.hear("torque sixty foot pounds");
        QCOMPARE(view->limitUnit(), QStringLiteral("N.m"));
        QCOMPARE(lift.said(), QStringLiteral("torque sixty foot pounds, within"));
        // Limits of one thing never judge another.
        lift.hear("battery twelve volts");
        QCOMPARE(lift.said(), QStringLiteral("battery twelve volts"));
        QVERIFY(at(view->draft()->values(), "low").isEmpty());
    }

    void aBagIsNamedOnTheStripPage() {
        const TalkingLift lift("StripPage");
        auto* view = lift.app->view<StripView>();
        QTRY_VERIFY(view->begun());
        lift.hear("bag one two");
        QCOMPARE(view->bag(), QStringLiteral("12"));
        QCOMPARE(lift.said(), QStringLiteral("bag twelve"));
        lift.hear("bag seven");
        QCOMPARE(lift.said(), QStringLiteral("bag seven, careful, it is in use"));
        lift.hear("undo");
        QCOMPARE(view->bag(), QStringLiteral("12"));
        // Without a title a step cannot be kept, and that is told.
        const std::size_t steps = lift.shop.stored().steps.size();
        lift.hear("next");
        QCOMPARE(lift.said(), QStringLiteral("not taken"));
        view->setTitle(QStringLiteral("horn off"));
        lift.hear("next");
        QTRY_COMPARE(lift.shop.stored().steps.size(), steps + 1);
        QCOMPARE(lift.shop.stored().steps.back().bag, std::string("12"));
        lift.hear("undo");
        QTRY_COMPARE(lift.shop.stored().steps.size(), steps);
    }

    void aBagFindsItsStepOnRefit() {
        const TalkingLift lift("RefitPage");
        auto* view = lift.app->view<RefitView>();
        QVERIFY(view != nullptr);
        QCOMPARE(view->step().toStdString(), lift.shop.lastStep);
        lift.hear("bag seven");
        QCOMPARE(view->step().toStdString(), lift.shop.step);
        lift.hear("bag two");
        QCOMPARE(lift.said(), QStringLiteral("not taken"));
        QCOMPARE(view->step().toStdString(), lift.shop.step);
        lift.hear("back");
        QCOMPARE(view->step().toStdString(), lift.shop.lastStep);
        lift.hear("done");
        QTRY_VERIFY(job::findStep(lift.shop.stored(), lift.shop.lastStep)->refitted.has_value());
        lift.hear("undo");
        QTRY_VERIFY(!job::findStep(lift.shop.stored(), lift.shop.lastStep)->refitted.has_value());
    }

    void refitStepsAreReadAloudWithTheirTorques() {
        const TalkingLift lift("RefitPage");
        auto* view = lift.app->view<RefitView>();
        QVERIFY(lift.app->touchTool(QStringLiteral("Read aloud")));
        QTRY_VERIFY(!lift.said().isEmpty());
        QVERIFY2(lift.said().startsWith(QStringLiteral("step one, refit ")), qPrintable(lift.said()));
        lift.hear("next");
        QTRY_COMPARE(lift.said(), view->sentence());
        QVERIFY2(lift.said().contains(QStringLiteral("bag seven")), qPrintable(lift.said()));
        QVERIFY2(lift.said().contains(QStringLiteral("torque")), qPrintable(lift.said()));
        QVERIFY(lift.app->touch(QStringLiteral("Torques")));
        QCOMPARE(lift.said(), view->spokenTorques());
        QVERIFY(!lift.said().contains(QStringLiteral("bag")));
        const qsizetype count = lift.app->speaker().said.size();
        lift.hear("slower");
        QCOMPARE(lift.app->speaker().said.size(), count + 1);
        QCOMPARE(lift.said(), view->sentence());
        QVERIFY(lift.app->speaker().slownesses.back() > 0);
        lift.hear("again");
        QCOMPARE(lift.app->speaker().said.size(), count + 2);
        // Refitted: the next one is read by itself.
        lift.hear("back");
        lift.hear("done");
        QTRY_VERIFY(lift.said().startsWith(QStringLiteral("step two, refit ")));
        lift.hear("stop");
        QTRY_VERIFY(!lift.app->speaker().speaking());
    }

    void whereNothingWasSaidThereIsNothingToUndo() {
        const TalkingLift lift("RefitPage");
        lift.hear("undo");
        QCOMPARE(lift.said(), QStringLiteral("not taken"));
        QVERIFY(lift.shows(QStringLiteral("There is nothing to undo.")));
    }

    void aMachineIsTakenInByVoice() {
        const TalkingLift lift("HomePage");
        lift.session->closeJob();
        lift.app->show("TakeInPage");
        // Nothing says yet which machine it is.
        lift.hear("photo");
        QCOMPARE(lift.said(), QStringLiteral("not taken"));
        lift.hear("done");
        QCOMPARE(lift.said(), QStringLiteral("not taken"));
        QVERIFY(!lift.app->label(QStringLiteral("Take in"))->property("text").toString().isEmpty());
        lift.session->openJob(QString::fromStdString(lift.shop.job));
        QTRY_VERIFY(lift.session->snapshot() != nullptr);
        lift.app->show("TakeInPage", {{QStringLiteral("editing"), true}});
        QTest::qWait(300);
        lift.hear("photo");
        QTRY_VERIFY(lift.app->button(QStringLiteral("Shoot")) != nullptr);
        lift.hear("done");
        QTRY_VERIFY(lift.app->button(QStringLiteral("Shoot")) == nullptr);
        lift.hear("done"); // what was corrected is said
        QTRY_VERIFY(lift.app->label(QStringLiteral("Machine and owner")) == nullptr);
    }

    void photoAndMemoDoWhatTheirButtonsDo_data() {
        QTest::addColumn<QByteArray>("page");
        for (const char* page : {"StripPage", "RefitPage", "JobPage"})
            QTest::newRow(page) << QByteArray(page);
    }

    void photoAndMemoDoWhatTheirButtonsDo() {
        QFETCH(const QByteArray, page);
        const TalkingLift lift(page.constData());
        if (page == "StripPage")
            QTRY_VERIFY(lift.app->view<StripView>()->begun());
        const std::size_t before = lift.shop.stored().photos.size();
        lift.hear("photo");
        QTRY_VERIFY(lift.app->button(QStringLiteral("Shoot")) != nullptr);
        // On the camera's screen the same word is the shutter, and the screen below does not hear it too.
        lift.hear("photo");
        QTRY_COMPARE(lift.shop.stored().photos.size(), before + 1);
        QCOMPARE(lift.said(), QStringLiteral("photo"));
        lift.hear("undo");
        QTRY_COMPARE(lift.shop.stored().photos.size(), before);
        lift.hear("done");
        QTRY_VERIFY(lift.app->button(QStringLiteral("Shoot")) == nullptr);
        lift.hear("memo");
        QTRY_COMPARE(lift.app->recorder().state(), platform::Recorder::State::Recording);
    }

    void handsFreeIsOffUntilItIsSwitchedOn() {
        const TalkingLift lift("HomePage");
        lift.session->set(QStringLiteral("voice"), QStringLiteral("off"));
        ToldListener& listener = lift.app->listener();
        lift.app->show("StripPage");
        QTRY_VERIFY(lift.app->view<StripView>() != nullptr && lift.app->view<StripView>()->begun());
        QVERIFY(!listener.handsFree);
        QVERIFY(lift.app->button(QStringLiteral("Hold and speak")) == nullptr);
        lift.session->set(QStringLiteral("hands-free"), QStringLiteral("on"));
        QVERIFY(listener.handsFree);
        // That it listens, and for what, is seen.
        QTRY_VERIFY(lift.shows(QStringLiteral("Microphone on. Say \"turquoise battery\" first.")));
        listener.call();
        QTRY_VERIFY(lift.shows(QStringLiteral("Listening: say it.")));
        listener.say("photo");
        QTRY_VERIFY(lift.app->button(QStringLiteral("Shoot")) != nullptr);
        QVERIFY(listener.handsFree); // the next screen at the lift goes on
        listener.say("done");
        QTRY_VERIFY(lift.app->button(QStringLiteral("Shoot")) == nullptr);
        QVERIFY(listener.handsFree);
        // What the device says itself is not heard.
        listener.say("bag one two");
        QVERIFY(lift.app->speaker().speaking());
        QVERIFY(listener.deaf);
        lift.app->speaker().finish();
        QVERIFY(!listener.deaf);
        // A screen that is not at the lift closes the microphone.
        lift.app->show("SettingsPage");
        QVERIFY(!listener.handsFree);
        QVERIFY(lift.app->touch(QStringLiteral("Back")));
        QTRY_VERIFY(listener.handsFree);
        lift.session->set(QStringLiteral("hands-free"), QStringLiteral("off"));
        QVERIFY(!listener.handsFree);
    }

    void thePaceIsASetting() {
        const TalkingLift lift("SettingsPage");
        QVERIFY(lift.app->touch(QStringLiteral("Slowest")));
        QCOMPARE(lift.session->setting(QStringLiteral("slowness")), QStringLiteral("0.9"));
        QCOMPARE(lift.app->speaker().slownesses.back(), 0.9);
        lift.app->show("MeasurePage");
        lift.hear("tread two millimetres");
        QCOMPARE(lift.app->speaker().slownesses.back(), 0.9);
    }

private:
    [[nodiscard]] static std::vector<job::Reading> shopReadings(const TalkingLift& lift) {
        return lift.shop.stored().readings;
    }
};

QTEST_MAIN(TalkTest)
#include "talk_test.moc"
