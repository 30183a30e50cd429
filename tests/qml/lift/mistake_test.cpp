// What was kept by mistake is taken out again, later than the undo line lasts, by touch alone.
#include "appwindow.h"

#include "core/journal/say.h"

#include <QtQml/qqmlextensionplugin.h>

Q_IMPORT_QML_PLUGIN(Undercowl_StylePlugin)
Q_IMPORT_QML_PLUGIN(UndercowlPlugin)

using namespace undercowl;
using namespace undercowl::ui;

class MistakeTest : public QObject {
    Q_OBJECT

private slots:
    void aReadingIsTakenOutAndBroughtBack() {
        const LiftShop shop;
        job::Reading reading;
        reading.id = journal::newId(1);
        reading.what = "front tyre";
        reading.value = {"18", "bar"};
        shop.say(journal::readingTaken(shop.job, reading));
        reading.id = journal::newId(1);
        reading.what = "battery";
        reading.value = {"12.6", "V"};
        shop.say(journal::readingTaken(shop.job, reading));
        const auto session = shop.session();
        AppWindow app(*session);
        app.show("ReadingsPage");
        QTRY_VERIFY(app.button(QStringLiteral("front tyre")) != nullptr);
        QVERIFY(app.touch(QStringLiteral("front tyre")));
        QVERIFY(app.touch(QStringLiteral("This reading was a mistake")));
        QTRY_COMPARE(shop.stored().readings.size(), std::size_t{1});
        QCOMPARE(shop.stored().readings[0].what, std::string("battery"));
        QTRY_VERIFY(app.button(QStringLiteral("front tyre")) == nullptr);
        QVERIFY(app.touch(QStringLiteral("Undo")));
        QTRY_COMPARE(shop.stored().readings.size(), std::size_t{2});
        QCOMPARE(shop.stored().readings[0].value, (job::TypedValue{"18", "bar"}));
    }

    void aFindingThatWasSettledIsOpenAgain() {
        const LiftShop shop;
        job::Finding finding;
        finding.id = journal::newId(1);
        finding.text = "brake hose cracked";
        finding.severity = job::Severity::Unsafe;
        shop.say(journal::findingNoted(shop.job, finding));
        shop.say(journal::findingSettled(shop.job, finding.id, "done"));
        QVERIFY(shop.stored().findings.at(0).settled);
        const auto session = shop.session();
        AppWindow app(*session);
        app.show("LookOverPage");
        QTRY_VERIFY(app.button(QStringLiteral("Not settled yet")) != nullptr);
        QVERIFY(app.touch(QStringLiteral("Not settled yet")));
        QTRY_VERIFY(!shop.stored().findings.at(0).settled);
        QTRY_VERIFY(app.button(QStringLiteral("Settle")) != nullptr);
        QVERIFY(app.touch(QStringLiteral("Undo")));
        QTRY_VERIFY(shop.stored().findings.at(0).settled);
        QCOMPARE(shop.stored().findings.at(0).settledHow, std::string("done"));
    }

    void aStepThatIsNotOnIsTakenBack() {
        const LiftShop shop;
        shop.say(journal::stepRefitted(shop.job, shop.lastStep, "with a new bolt"));
        const auto refitted = [&] { return job::findStep(shop.stored(), shop.lastStep)->refitted; };
        QVERIFY(refitted());
        const auto session = shop.session();
        AppWindow app(*session);
        app.show("RefitStepsPage");
        QVERIFY(app.touch(QStringLiteral("take the brake lever off")));
        QTRY_VERIFY(app.label(QStringLiteral("Is refitted")) != nullptr);
        QVERIFY(app.touchTool(QStringLiteral("It is not refitted")));
        QTRY_VERIFY(!refitted());
        // It stays on the screen, and can be refitted.
        QTRY_VERIFY(app.button(QStringLiteral("Refitted")) != nullptr);
        QVERIFY(app.label(QStringLiteral("take the brake lever off")) != nullptr);
        QVERIFY(app.touch(QStringLiteral("Undo")));
        QTRY_VERIFY(refitted());
        QCOMPARE(refitted()->note, std::string("with a new bolt"));
        QTRY_VERIFY(app.label(QStringLiteral("Is refitted")) != nullptr);
    }

    void aWireThatMatchedIsAnsweredAgain() {
        const LiftShop shop;
        shop.answer();
        {
            const auto session = shop.session();
            AppWindow app(*session);
            app.show("ReadBackPage", {{QStringLiteral("gathering"), QString::fromStdString(shop.gathering)}});
            QVERIFY(app.touch(QStringLiteral("Matches")));
            QTRY_COMPARE(shop.stored().wireChecks.size(), std::size_t{1});
        }
        const auto session = shop.session(); // days later
        AppWindow app(*session);
        app.show("ReadBackPage", {{QStringLiteral("gathering"), QString::fromStdString(shop.gathering)}});
        QTRY_VERIFY(app.label(QStringLiteral("place 2")) != nullptr);
        QVERIFY(app.touch(QStringLiteral("Back")));
        QTRY_VERIFY(app.label(QStringLiteral("checked before: matches")) != nullptr);
        QVERIFY(app.touch(QStringLiteral("Does not match")));
        const auto check = [&] { return shop.stored().wireChecks.at(0).outcome; };
        QTRY_COMPARE(check(), job::MatchOutcome::DoesNotMatch);
        QCOMPARE(shop.stored().wireChecks.size(), std::size_t{1});
        const auto job = shop.stored();
        const auto* place = job.gatherings.at(0).find({wiring::Half::Loom, 1, 1});
        QVERIFY(place == nullptr || !place->answer(wiring::Answer::AsRefitted));
        QVERIFY(app.touch(QStringLiteral("Look again")));
        QVERIFY(app.touch(QStringLiteral("Matches")));
        QTRY_COMPARE(check(), job::MatchOutcome::Matches);
    }
};

QTEST_MAIN(MistakeTest)
#include "mistake_test.moc"
