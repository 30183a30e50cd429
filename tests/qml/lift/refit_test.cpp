// Refitting backwards, and the wiring read back wire by wire.
#include "liftshop.h"

#include "qml/handover/handoverview.h"
#include "qml/refit/linebackview.h"
#include "qml/refit/readbackview.h"
#include "qml/refit/refitview.h"

#include <QTest>

#include <algorithm>

using namespace undercowl;
using namespace undercowl::ui;

namespace {

const wiring::PlaceKey first{wiring::Half::Loom, 1, 1};

std::unique_ptr<ReadBackView> readBackOn(const LiftShop& shop, ShopSession& session) {
    auto view = std::make_unique<ReadBackView>();
    view->setProperty("gathering", QString::fromStdString(shop.gathering));
    view->setSession(&session);
    view->componentComplete();
    return view;
}

// Two throttle cables and a hose, stripped after what the shop has.
struct Lines {
    Id pull, close, hose;
};

Lines linesIn(const LiftShop& shop) {
    const Lines lines{"018bcfe5-8358-7d42-8b4d-66eeb0f36a01", "018bcfe5-8358-7d42-8b4d-66eeb0f36a02",
                      "018bcfe5-8358-7d42-8b4d-66eeb0f36a03"};
    job::StripStep step;
    step.task = shop.task;
    step.id = lines.hose;
    step.title = "fuel hose off";
    shop.say(journal::stepStripped(shop.job, step));
    step.id = lines.close;
    step.title = "closing cable off";
    step.routing = "under the steering stop";
    step.ends = "grip, lower slot";
    shop.say(journal::stepStripped(shop.job, step));
    step.id = lines.pull;
    step.title = "pulling cable off";
    step.ends = "grip, upper slot";
    shop.say(journal::stepStripped(shop.job, step));
    return lines;
}

void begin(LineBackView& view, ShopSession& session, const Id& step = {}) {
    view.setProperty("step", QString::fromStdString(step));
    view.setSession(&session);
    view.componentComplete();
}

const std::optional<wiring::PlaceAnswer>* refitted(const job::Job& job, const wiring::PlaceKey& key) {
    const auto* place = job.gatherings[0].find(key);
    return place == nullptr ? nullptr : &place->answer(wiring::Answer::AsRefitted);
}

} // namespace

class RefitTest : public QObject {
    Q_OBJECT

private slots:
    void theLastStepComesFirstAndUndoBringsItBack() {
        const LiftShop shop;
        const auto session = shop.session();
        RefitView view;
        view.setSession(session.get());
        view.componentComplete();
        QCOMPARE(view.step(), QString::fromStdString(shop.lastStep));
        QCOMPARE(view.position(), QStringLiteral("1 / 2"));
        view.refit({});
        QTRY_COMPARE(view.step(), QString::fromStdString(shop.step));
        QCOMPARE(view.torques(), QStringList{QStringLiteral("screw M5: 4.5\u00a0N.m")});
        QVERIFY(!view.cautions().isEmpty());
        QCOMPARE(view.wires()->count(), 1);
        session->undoLast();
        QTRY_COMPARE(view.step(), QString::fromStdString(shop.lastStep));
        QVERIFY(!job::findStep(shop.stored(), shop.lastStep)->refitted);
    }

    void aStepThatIsBehindAnotherSaysSo() {
        const LiftShop shop;
        const auto session = shop.session();
        RefitView view;
        view.setSession(session.get());
        view.componentComplete();
        view.choose(QString::fromStdString(shop.step));
        QCOMPARE(view.behind(), QStringLiteral("take the brake lever off"));
    }

    void aWaitingTaskIsShownAsWaiting() {
        const LiftShop shop;
        shop.say(journal::taskHeld(shop.job, shop.task, "brake shoes"));
        const auto session = shop.session();
        RefitView view;
        view.setSession(session.get());
        view.componentComplete();
        QVERIFY(view.stalled());
        QCOMPARE(view.steps()->lines()[0].mark, QStringLiteral("waiting"));
        view.choose(QString::fromStdString(shop.lastStep));
        QCOMPARE(view.waitsFor(), QStringLiteral("brake shoes"));
        view.resume();
        QTRY_VERIFY(!view.waiting());
    }

    void doneSaysTheCheckAndTheAnswerAsRefitted() {
        const LiftShop shop;
        shop.answer();
        const auto session = shop.session();
        const auto view = readBackOn(shop, *session);
        QCOMPARE(view->count(), 3);
        QCOMPARE(view->wireWords(), QStringLiteral("green, white tracer"));
        QCOMPARE(view->reads(), QStringLiteral("as found"));
        view->done();
        view->done(); // a trembling thumb says nothing of the next wire
        QTRY_COMPARE(view->index(), 1);
        QVERIFY(view->twin().contains(QStringLiteral("place 3")));
        const auto job = shop.stored();
        QCOMPARE(job.wireChecks.size(), std::size_t{1});
        QCOMPARE(job.wireChecks[0].outcome, job::MatchOutcome::Matches);
        QVERIFY(refitted(job, first)->has_value());
        // The job is opened again after weeks: it goes on where it stopped.
        const auto later = shop.session();
        QCOMPARE(readBackOn(shop, *later)->index(), 1);
        session->undoLast();
        QTRY_VERIFY(!refitted(shop.stored(), first)->has_value());
    }

    void doesNotMatchIsWrittenDownWithWhatItIsSwappedWith() {
        const LiftShop shop;
        shop.answer();
        const auto session = shop.session();
        const auto view = readBackOn(shop, *session);
        view->doesNotMatch();
        QTRY_VERIFY(!view->saying());
        QVERIFY(view->mismatch());
        QCOMPARE(view->index(), 0);
        QCOMPARE(view->failing(), 1);
        view->swappedWith(1);
        QTRY_COMPARE(shop.stored().wireChecks[0].note, std::string("swapped with place 3"));
        QVERIFY(!refitted(shop.stored(), first)->has_value());
        QTRY_VERIFY(!view->saying());
        view->lookAgain();
        view->done();
        QTRY_COMPARE(view->matching(), 1);
        QCOMPARE(view->failing(), 0);
    }

    void refittingNamesTheWiresThatAreLeft() {
        const LiftShop shop;
        shop.answer();
        const auto session = shop.session();
        const auto view = readBackOn(shop, *session);
        view->doesNotMatch();
        QTRY_VERIFY(!view->saying());
        QVERIFY2(view->failingPlaces().startsWith(QStringLiteral("place 1: ")),
                 qPrintable(view->failingPlaces()));
        QVERIFY(!view->failingPlaces().contains(u'\n'));
        QCOMPARE(view->openPlaces().count(u'\n'), 1); // the other two, by name
        RefitView refit;
        refit.setSession(session.get());
        refit.componentComplete();
        refit.choose(QString::fromStdString(shop.lastStep));
        QVERIFY(refit.wiresLeft().isEmpty());
        refit.choose(QString::fromStdString(shop.step));
        QCOMPARE(refit.wiresLeft().size(), 1);
        QVERIFY2(refit.wiresLeft()[0].startsWith(
                     QStringLiteral("right switch cluster: place 1 does not match; not read back: places ")),
                 qPrintable(refit.wiresLeft()[0]));
        const auto& steps = refit.steps()->lines();
        QVERIFY(std::ranges::any_of(
            steps, [](const Line& line) { return line.detail.contains(u"place 1 does not match"); }));
    }

    void aBagThatIsStillClosedIsToldAtTheEnd() {
        const LiftShop shop;
        const auto session = shop.session();
        HandOverView leaving;
        leaving.setSession(session.get());
        leaving.componentComplete();
        const auto told = [&] {
            const auto& warnings = leaving.property("warnings").value<LineModel*>()->lines();
            return std::ranges::any_of(
                warnings, [](const Line& line) { return line.detail == u"Bag 8 is still closed."; });
        };
        QVERIFY(told());
        shop.say(journal::stepRefitted(shop.job, shop.lastStep));
        const auto later = shop.session();
        HandOverView after;
        after.setSession(later.get());
        after.componentComplete();
        const auto& warnings = after.property("warnings").value<LineModel*>()->lines();
        QVERIFY(
            std::ranges::none_of(warnings, [](const Line& line) { return line.detail.contains(u"Bag 8"); }));
    }

    void hosesAndCablesAreReadBackInRefitOrder() {
        const LiftShop shop;
        const Lines lines = linesIn(shop);
        (void)shop.photo("switch-before.jpg", lines.close, job::PhotoPurpose::Strip);
        const auto session = shop.session();
        LineBackView view;
        begin(view, *session);
        QCOMPARE(view.count(), 3);
        QCOMPARE(view.place(), QStringLiteral("pulling cable off"));
        QVERIFY(view.photo().isEmpty());
        QVERIFY(!view.refitted());
        view.done();
        view.done(); // a trembling thumb says nothing of the next one
        QTRY_COMPARE(view.index(), 1);
        QCOMPARE(view.place(), QStringLiteral("closing cable off"));
        QVERIFY(!view.photo().isEmpty());
        QCOMPARE(view.details(), QStringLiteral("Routing: under the steering stop\nEnds: grip, lower slot"));
        QCOMPARE(
            view.sentence(),
            QStringLiteral("closing cable off, it runs under the steering stop, its ends, grip, lower slot"));
        QCOMPARE(view.briefSentence(), QStringLiteral("its ends, grip, lower slot"));
        QCOMPARE(job::findStep(shop.stored(), lines.pull)->lineCheck->outcome, job::MatchOutcome::Matches);
        view.goOn();
        QVERIFY(view.details().contains(QStringLiteral("there is no photo"))); // a hose that nobody described
        QVERIFY(view.briefSentence().isEmpty());
        view.goOn();
        QVERIFY(view.over());
        QCOMPARE(view.matching(), 1);
        // The job is opened again after weeks: it goes on where it stopped, or with the one that was asked
        // for.
        const auto later = shop.session();
        LineBackView again;
        begin(again, *later);
        QCOMPARE(again.index(), 1);
        LineBackView wanted;
        begin(wanted, *later, lines.hose);
        QCOMPARE(wanted.place(), QStringLiteral("fuel hose off"));
        session->undoLast();
        QTRY_VERIFY(!job::findStep(shop.stored(), lines.pull)->lineCheck);
    }

    void aCableThatIsSwappedStopsTheMachine() {
        const LiftShop shop;
        const Lines lines = linesIn(shop);
        for (const Id& step : {lines.pull, lines.close, lines.hose, shop.lastStep, shop.step})
            shop.say(journal::stepRefitted(shop.job, step));
        const auto session = shop.session();
        LineBackView view;
        begin(view, *session);
        QVERIFY(view.refitted());
        view.doesNotMatch();
        QTRY_VERIFY(!view.saying());
        QVERIFY(view.mismatch());
        QCOMPARE(view.otherPlaces().size(), 2);
        const auto with = view.otherPlaces().indexOf(QStringLiteral("closing cable off"));
        view.swappedWith(static_cast<int>(with));
        QTRY_COMPARE(job::findStep(shop.stored(), lines.pull)->lineCheck->note,
                     std::string("swapped with closing cable off"));
        QTRY_VERIFY(!view.saying());
        HandOverView leaving;
        leaving.setSession(session.get());
        leaving.componentComplete();
        const auto stops = [&] {
            const auto& warnings = leaving.property("warnings").value<LineModel*>()->lines();
            return std::ranges::any_of(warnings, [](const Line& line) {
                return line.mark == u"unsafe" && line.more == u"LineBackPage" &&
                       line.title == u"does not run as it was found: pulling cable off";
            });
        };
        QVERIFY(stops());
        view.lookAgain();
        view.done();
        QTRY_COMPARE(view.matching(), 1);
        QTRY_VERIFY(!stops());
    }

    void itStopsWhereTheAnswersDiffer() {
        const LiftShop shop;
        shop.answer();
        auto should = answerOf(colour::Insulation::BN);
        should.source = "manual, page 7-12";
        shop.say(
            journal::wireAnswered(shop.job, shop.gathering, first, wiring::Answer::AsItShouldBe, should));
        const auto session = shop.session();
        const auto view = readBackOn(shop, *session);
        QVERIFY(view->mustChoose());
        QCOMPARE(view->reads(), QStringLiteral("as it should be"));
        QVERIFY(view->otherWords().startsWith(QStringLiteral("green, white tracer")));
        view->done();
        view->doesNotMatch();
        QTest::qWait(50);
        QVERIFY(shop.stored().wireChecks.empty()); // nothing is said before one was chosen
        view->choose(true);
        QVERIFY(!view->mustChoose());
        QCOMPARE(view->reads(), QStringLiteral("as found"));
        view->done();
        QTRY_COMPARE(view->index(), 1);
        const auto job = shop.stored();
        QCOMPARE(job.wireChecks[0].against, wiring::Answer::AsFound);
        QCOMPARE((*refitted(job, first))->wire.colour.base, colour::Insulation::GN);
    }

    void itStopsWhereAPlaceWasFoundEmptyThatShouldHoldAWire() {
        const LiftShop shop;
        shop.say(journal::placeEmpty(shop.job, shop.gathering, first, wiring::Answer::AsFound, true));
        shop.say(journal::wireAnswered(shop.job, shop.gathering, first, wiring::Answer::AsItShouldBe,
                                       answerOf(colour::Insulation::BN)));
        const auto session = shop.session();
        const auto view = readBackOn(shop, *session);
        QVERIFY(view->mustChoose());
        QCOMPARE(view->reads(), QStringLiteral("as it should be"));
        QCOMPARE(view->otherWords(), QStringLiteral("empty, no wire"));
        QVERIFY(view->otherBase().isEmpty());
        QVERIFY(view->sentence().endsWith(QStringLiteral("stop, it was found empty, without a wire")));
        view->choose(true);
        QVERIFY(!view->mustChoose());
        QCOMPARE(view->wireWords(), QStringLiteral("empty, no wire"));
        view->done();
        QTRY_COMPARE(shop.stored().wireChecks.size(), std::size_t{1});
        const auto job = shop.stored();
        QCOMPARE(job.wireChecks[0].against, wiring::Answer::AsFound);
        QVERIFY(job.gatherings[0].find(first)->saidEmpty(wiring::Answer::AsRefitted));
    }
};

QTEST_MAIN(RefitTest)
#include "refit_test.moc"
