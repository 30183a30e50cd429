// Wires, cables and hoses by voice: heard into their places, read back without a touch.
#include "talkinglift.h"

#include "qml/refit/linebackview.h"
#include "qml/refit/readbackview.h"
#include "qml/wiring/placeview.h"
#include "qml/wiring/strokeview.h"

#include <QtQml/qqmlextensionplugin.h>

Q_IMPORT_QML_PLUGIN(Undercowl_StylePlugin)
Q_IMPORT_QML_PLUGIN(UndercowlPlugin)

using namespace undercowl;
using namespace undercowl::ui;

class WiresTalkTest : public QObject {
    Q_OBJECT

private slots:
    void aCableIsReadBackByVoice() {
        const Id cableId = "018bcfe5-8358-7d42-8b4d-66eeb0f36a01";
        const Id hoseId = "018bcfe5-8358-7d42-8b4d-66eeb0f36a02";
        TalkingLift lift("HomePage");
        job::StripStep cable;
        cable.id = cableId;
        cable.task = lift.shop.task;
        cable.title = "clutch cable off";
        cable.ends = "lever; gearbox arm";
        lift.shop.say(journal::stepStripped(lift.shop.job, cable));
        cable.id = hoseId;
        cable.title = "fuel hose off";
        cable.ends = {};
        cable.routing = "behind the air box";
        lift.shop.say(journal::stepStripped(lift.shop.job, cable));
        lift.anew();
        lift.app->show("LineBackPage");
        auto* view = lift.app->view<LineBackView>();
        QVERIFY(view != nullptr);
        QCOMPARE(view->count(), 2);
        QVERIFY(lift.app->touch(QStringLiteral("Read aloud")));
        QTRY_COMPARE(lift.said(), QStringLiteral("fuel hose off, it runs behind the air box"));
        lift.hear("next");
        QTRY_COMPARE(lift.said(), QStringLiteral("clutch cable off, its ends, lever; gearbox arm"));
        QVERIFY(lift.app->touch(QStringLiteral("Ends only")));
        QCOMPARE(lift.said(), QStringLiteral("its ends, lever; gearbox arm"));
        const qsizetype count = lift.app->speaker().said.size();
        lift.hear("slower");
        QCOMPARE(lift.app->speaker().said.size(), count + 1);
        QVERIFY(lift.app->speaker().slownesses.back() > 0);
        lift.hear("again");
        QCOMPARE(lift.said(), view->sentence());
        lift.hear("does not match");
        QTRY_VERIFY(view->mismatch());
        const auto check = [&] { return job::findStep(lift.shop.stored(), cableId)->lineCheck; };
        QTRY_VERIFY_WITH_TIMEOUT(check().has_value(), 20000);
        QCOMPARE(check()->outcome, job::MatchOutcome::DoesNotMatch);
        lift.hear("undo");
        QTRY_VERIFY(!check());
        QTRY_VERIFY(!view->mismatch()); // it is looked at again
        lift.hear("back");
        lift.hear("done");
        QTRY_COMPARE(view->matching(), 1);
        lift.hear("stop");
        QTRY_VERIFY(!lift.app->speaker().speaking());
    }

    // Hands and eyes are on the machine: from the first wire to the last, one of them corrected.
    void sixWiresAreReadBackWithoutATouch() {
        TalkingLift lift("HomePage");
        for (int place = 1; place <= 6; ++place)
            lift.shop.say(journal::wireAnswered(lift.shop.job, lift.shop.gathering,
                                                {wiring::Half::Loom, place, 1}, wiring::Answer::AsFound,
                                                answerOf(static_cast<colour::Insulation>(place))));
        lift.anew();
        lift.session->set(QStringLiteral("hands-free"), QStringLiteral("on"));
        lift.app->show("ReadBackPage",
                       {{QStringLiteral("gathering"), QString::fromStdString(lift.shop.gathering)}});
        auto* view = lift.app->view<ReadBackView>();
        QVERIFY(view != nullptr);
        QCOMPARE(view->count(), 6);
        ToldListener& listener = lift.app->listener();
        const auto matching = [&] {
            return std::ranges::count(lift.shop.stored().wireChecks, job::MatchOutcome::Matches,
                                      &job::WireCheck::outcome);
        };
        listener.call();
        listener.say("again"); // begins to read aloud
        QTRY_COMPARE(lift.said(), view->sentence());
        QVERIFY(lift.said().startsWith(QStringLiteral("place one, ")));
        for (int place = 1; place <= 3; ++place) {
            listener.say("done");
            QTRY_COMPARE(view->index(), place);
            QTRY_COMPARE(lift.said(), view->sentence());
        }
        // Too soon, twice: each is there again, and read again.
        listener.say("undo");
        QTRY_COMPARE(view->index(), 2);
        QTRY_VERIFY(lift.said().startsWith(QStringLiteral("place three, ")));
        listener.say("undo");
        QTRY_COMPARE(view->index(), 1);
        QTRY_VERIFY(lift.said().startsWith(QStringLiteral("place two, ")));
        QCOMPARE(matching(), 1);
        for (int place = 2; place <= 5; ++place) {
            listener.say("done");
            QTRY_COMPARE(view->index(), place);
        }
        listener.say("does not match");
        QTRY_VERIFY(view->mismatch() && !view->saying());
        const qsizetype count = lift.app->speaker().said.size();
        listener.say("undo"); // nothing moves: it is read once more
        QTRY_VERIFY(!view->mismatch());
        QTRY_COMPARE(lift.app->speaker().said.size(), count + 1);
        QVERIFY(lift.said().startsWith(QStringLiteral("place six, ")));
        listener.say("done");
        QTRY_VERIFY(view->over());
        QTRY_COMPARE(lift.said(), QStringLiteral("that was the last one, all match"));
        listener.say("undo");
        QTRY_COMPARE(view->index(), 5);
        listener.say("next");
        QTRY_COMPARE(lift.said(), QStringLiteral("that was the last one, one was not read back"));
        QCOMPARE(matching(), 5);
        listener.say("done");
        QTRY_VERIFY(lift.app->view<ReadBackView>() == nullptr);
    }

    void whatDiffersIsNotDecidedByVoice() {
        TalkingLift lift("HomePage");
        auto should = answerOf(colour::Insulation::BK);
        should.source = "manual, page 7-12";
        lift.shop.say(journal::wireAnswered(lift.shop.job, lift.shop.gathering, {wiring::Half::Loom, 1, 1},
                                            wiring::Answer::AsItShouldBe, should));
        lift.anew();
        lift.app->show("ReadBackPage",
                       {{QStringLiteral("gathering"), QString::fromStdString(lift.shop.gathering)}});
        auto* view = lift.app->view<ReadBackView>();
        QVERIFY(view != nullptr);
        QVERIFY(view->mustChoose());
        for (const char* words : {"done", "does not match"}) {
            lift.hear(words);
            QCOMPARE(lift.said(), QStringLiteral("not taken"));
            QVERIFY(view->mustChoose());
        }
        QVERIFY(lift.shop.stored().wireChecks.empty());
        lift.hear("again");
        QTRY_COMPARE(lift.said(), view->sentence());
        lift.hear("next");
        QTRY_COMPARE(view->index(), 1);
    }

    void aWireIsHeardIntoItsPlace() {
        const LiftShop probe;
        TalkingLift lift("HomePage");
        lift.app->show("PlacePage",
                       {{QStringLiteral("gathering"), QString::fromStdString(lift.shop.gathering)},
                        {QStringLiteral("half"), QStringLiteral("loom")},
                        {QStringLiteral("place"), QStringLiteral("2/1")}});
        const auto answer = [&]() -> wiring::PlaceAnswer {
            const auto job = lift.shop.stored();
            const auto* place = job.gatherings[0].find({wiring::Half::Loom, 2, 1});
            return place != nullptr && place->answer(wiring::Answer::AsFound)
                       ? *place->answer(wiring::Answer::AsFound)
                       : wiring::PlaceAnswer{};
        };
        const auto before = answer();
        lift.hear("grey with red tracer blade six point three stop lamp");
        QCOMPARE(lift.said(), QStringLiteral("grey with red tracer blade six point three stop lamp"));
        QTRY_COMPARE(answer().how, wiring::HowKnown::Heard);
        QCOMPARE(answer().wire.colour, (colour::WireColour{colour::Insulation::GY, colour::Insulation::RD}));
        QCOMPARE(wiring::text(answer().wire.terminal), std::string("blade 6.3"));
        QCOMPARE(answer().wire.function, std::string("stop lamp"));
        QTRY_VERIFY(lift.shows(QStringLiteral("heard")));
        // What is not said stays.
        lift.hear("orange");
        QTRY_COMPARE(answer().wire.colour, (colour::WireColour{colour::Insulation::OG, {}}));
        QCOMPARE(answer().wire.function, std::string("stop lamp"));
        lift.hear("undo");
        QTRY_COMPARE(answer().wire.colour,
                     (colour::WireColour{colour::Insulation::GY, colour::Insulation::RD}));
        // 'As it should be' needs a source, and says so.
        QVERIFY(lift.app->touch(QStringLiteral("As it should be")));
        lift.hear("green");
        QCOMPARE(lift.said(), QStringLiteral("not taken"));
        QVERIFY(before.how != wiring::HowKnown::Heard);
    }

    void wiresOfAStrokeAreSaid() {
        TalkingLift lift("HomePage");
        lift.app->show("StrokePage",
                       {{QStringLiteral("gathering"), QString::fromStdString(lift.shop.gathering)}});
        auto* view = lift.app->view<StrokeView>();
        QVERIFY(view != nullptr);
        QTRY_VERIFY(view->rows()->count() >= 3);
        const auto answer = [&](int place) {
            const auto job = lift.shop.stored();
            const auto* found = job.gatherings[0].find({wiring::Half::Loom, place, 1});
            return found != nullptr && found->answer(wiring::Answer::AsFound)
                       ? *found->answer(wiring::Answer::AsFound)
                       : wiring::PlaceAnswer{};
        };
        view->setCurrent(1);
        lift.hear("grey with red tracer");
        QTRY_COMPARE(answer(2).how, wiring::HowKnown::Heard);
        QCOMPARE(answer(2).wire.colour, (colour::WireColour{colour::Insulation::GY, colour::Insulation::RD}));
        QCOMPARE(lift.said(), QStringLiteral("grey with red tracer"));
        lift.hear("undo");
        QTRY_VERIFY(answer(2).how != wiring::HowKnown::Heard);
        // Nothing of what was said is dropped unsaid.
        view->setCurrent(1);
        lift.hear("orange blade six point three");
        QCOMPARE(lift.said(), QStringLiteral("not taken"));
        QVERIFY(answer(2).how != wiring::HowKnown::Heard);
        lift.hear("back");
        QCOMPARE(view->current(), 0);
        lift.hear("does not match");
        QTRY_VERIFY(lift.app->button(QStringLiteral("violet")) != nullptr);
    }
};

QTEST_MAIN(WiresTalkTest)
#include "wirestalk_test.moc"
