// What a job needs beside its spine: the list by what machines wait for, hardware on the photo, an order of
// one's own, a new part's wires, proofs on one page.
#include "forms.h"

#include "core/job/leaving.h"
#include "core/journal/sayclosing.h"
#include "core/journal/saywork.h"
#include "qml/find/finder.h"
#include "qml/handover/handoverview.h"
#include "qml/prove/proofsview.h"
#include "qml/refit/refitview.h"
#include "qml/shell/shophome.h"
#include "qml/shell/taskview.h"
#include "qml/strip/stripview.h"
#include "qml/wiring/carryview.h"
#include "qml/wiring/gatheringview.h"

#include <QSignalSpy>
#include <QTest>

using namespace undercowl;
using namespace undercowl::ui;

namespace {

template<typename View>
std::unique_ptr<View> inShop(ShopSession& session) {
    auto view = std::make_unique<View>();
    view->setProperty("session", QVariant::fromValue(&session));
    return view;
}

std::unique_ptr<StripView> correcting(ShopSession& session, const Id& step) {
    auto view = std::make_unique<StripView>();
    view->setProperty("corrects", QString::fromStdString(step));
    view->setSession(&session);
    view->componentComplete();
    if (!QTest::qWaitFor([&] { return view->begun(); }))
        qFatal("the draft was not read");
    return view;
}

QString groupOf(ShopSession& session) {
    const auto home = inShop<ShopHome>(session);
    home->componentComplete();
    if (!QTest::qWaitFor([&] { return home->ready() && home->jobs()->count() > 0; }))
        qFatal("the list was not read");
    const Line& line = home->jobs()->lines().front();
    return line.group + QStringLiteral("; ") + line.more;
}

wiring::PlaceAnswer serving(const char* function) {
    wiring::PlaceAnswer answer;
    answer.wire.function = function;
    answer.how = wiring::HowKnown::Typed;
    return answer;
}

} // namespace

class WholeTest : public QObject {
    Q_OBJECT

private slots:
    void theListIsGroupedByWhatMachinesWaitFor() {
        const LiftShop shop;
        QCOMPARE(groupOf(*shop.session()),
                 QStringLiteral("For bench time; next: go on stripping, or refit: take the brake lever off"));
        {
            const auto session = shop.session();
            const auto task = on<TaskView>(*session);
            task->setTask(QString::fromStdString(shop.task));
            const auto why = form(*session, {{QStringLiteral("heldBy"), QStringLiteral("owner")}});
            task->hold(why.get());
            QVERIFY(task->errors().contains(QStringLiteral("waitingFor")));
            why->set(QStringLiteral("waitingFor"), QStringLiteral("his word on the price"));
            task->hold(why.get());
            QTRY_COMPARE(task->state(), QStringLiteral("waiting"));
            QTRY_VERIFY(!why->begun()); // it was said: nothing of it waits
            QCOMPARE(groupOf(*session),
                     QStringLiteral("For the owner's answer; waits for: his word on the price"));
        }
        shop.say(journal::taskResumed(shop.job, shop.task));
        shop.say(journal::stepRefitted(shop.job, shop.lastStep));
        shop.say(journal::stepRefitted(shop.job, shop.step));
        QVERIFY(groupOf(*shop.session()).startsWith(QStringLiteral("To be proved; 4 to prove, first: ")));
    }

    void findLeavesOutWhatIsNotThatSerious() {
        const LiftShop shop;
        shop.say(
            journal::findingNoted(shop.job, {"a", "tyre cracked", job::Severity::Unsafe, "", false, "", {}}));
        shop.say(journal::findingNoted(shop.job, {"b", "tyre worn", job::Severity::Soon, "", false, "", {}}));
        const auto session = shop.session();
        const auto finder = inShop<Finder>(*session);
        finder->setWords(QStringLiteral("tyre"));
        QTRY_COMPARE(finder->hits()->count(), 2);
        finder->setSeverity(1);
        QCOMPARE(finder->hits()->count(), 1);
        QCOMPARE(finder->hits()->lines()[0].title, QStringLiteral("tyre cracked"));
        QVERIFY(finder->filtered());
        finder->setSeverity(0);
        const auto bench = finder->waitings().indexOf(QStringLiteral("For bench time"));
        const auto parts = finder->waitings().indexOf(QStringLiteral("For parts"));
        finder->setWaits(static_cast<int>(bench));
        QCOMPARE(finder->hits()->count(), 2);
        finder->setWaits(static_cast<int>(parts));
        QCOMPARE(finder->hits()->count(), 0);
    }

    void aWireThatIsFoundNamesItsConnector() {
        const LiftShop shop;
        shop.answer();
        const auto session = shop.session();
        const auto finder = inShop<Finder>(*session);
        finder->setWords(QStringLiteral("green white"));
        QTRY_COMPARE(finder->hits()->count(), 1);
        QCOMPARE(finder->hits()->lines()[0].detail,
                 QString::fromStdString(shop.stored().gatherings[0].title));
        QVERIFY(finder->hits()->lines()[0].title != finder->hits()->lines()[0].detail);
    }

    void hardwareIsPlacedOnThePhotoAndShownAgainOnRefit() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto view = correcting(*session, shop.step);
        QVERIFY(view->marks().isEmpty());
        view->place(0.2, 0.3); // nothing is being placed
        QVERIFY(view->marks().isEmpty());
        view->setPiece(0);
        view->place(0.2, 0.3);
        view->place(0.8, 0.3);
        QCOMPARE(view->marks().size(), 2);
        view->place(0.5, 0.5); // there are two of them
        QVERIFY(view->errors().contains(QStringLiteral("place")));
        view->place(0.81, 0.31); // on a ring: taken away
        QCOMPARE(view->marks().size(), 1);
        view->place(0.7, 0.3);
        view->setPiece(-1);
        view->setDetail(QStringLiteral("routing"), QStringLiteral(" left of the headstock "));
        view->setDetail(QStringLiteral("asFound"), QStringLiteral("7 turns out"));
        const QSignalSpy kept(view.get(), &StripView::kept);
        view->keep();
        QTRY_COMPARE(kept.count(), 1);
        const auto job = shop.stored();
        QCOMPARE(job::findStep(job, shop.step)->hardware.at(0).at.size(), std::size_t{2});
        RefitView refit;
        refit.setSession(session.get());
        refit.componentComplete();
        refit.choose(QString::fromStdString(shop.step));
        QCOMPARE(refit.marks().size(), 2);
        QCOMPARE(refit.pieces().size(), 1);
        QCOMPARE(refit.details(), QStringLiteral("Routing: left of the headstock\nAs found: 7 turns out"));
    }

    void whatIsPlacedSurvivesTheScreen() {
        const LiftShop shop;
        {
            const auto session = shop.session();
            const auto view = correcting(*session, shop.step);
            view->setPiece(0);
            view->place(0.2, 0.3);
            view->setDetail(QStringLiteral("letOut"), QStringLiteral("40 ml"));
            session->flush();
        }
        const auto session = shop.session();
        const auto view = correcting(*session, shop.step);
        QCOMPARE(view->marks().size(), 1);
        QCOMPARE(view->details().value(QStringLiteral("letOut")).toString(), QStringLiteral("40 ml"));
    }

    void theOrderIsChangedByHandWhereNothingForbidsIt() {
        const LiftShop shop;
        job::StripStep seat;
        seat.id = "seat";
        seat.title = "seat off";
        shop.say(journal::stepStripped(shop.job, seat)); // of no task
        const auto session = shop.session();
        const auto view = on<RefitView>(*session);
        const auto titles = [&] {
            QStringList all;
            for (const Line& line : view->steps()->lines())
                all += line.title;
            return all.join(u'|');
        };
        QCOMPARE(titles(), QStringLiteral("seat off|take the brake lever off|unplug 6-place connector"));
        view->reorder(QString::fromStdString(shop.step), true);
        QCOMPARE(view->errors().value(QStringLiteral("order")).toString(),
                 QStringLiteral("Not before: take the brake lever off came off after unplug 6-place "
                                "connector, so it goes on first."));
        view->reorder(QStringLiteral("seat"), false);
        QTRY_COMPARE(titles(), QStringLiteral("take the brake lever off|seat off|unplug 6-place connector"));
        QVERIFY(view->errors().isEmpty());
        session->undoLast();
        QTRY_COMPARE(titles(), QStringLiteral("seat off|take the brake lever off|unplug 6-place connector"));
    }

    void aNewPartsWiresAreCarriedOverByWhatTheyServe() {
        const LiftShop shop;
        shop.answer(); // three wires in the loom half
        for (const auto& [place, function] : {std::pair{1, "stop lamp"}, {2, "horn"}, {3, "ignition feed"}})
            shop.say(journal::wireAnswered(shop.job, shop.gathering, {wiring::Half::Unit, place, 1},
                                           wiring::Answer::AsItShouldBe, serving(function)));
        const auto session = shop.session();
        GatheringView fresh;
        fresh.setSession(session.get());
        fresh.setReplaces(QString::fromStdString(shop.gathering));
        fresh.componentComplete();
        const auto what = form(*session, {{QStringLiteral("title"), QStringLiteral("new switch")},
                                          {QStringLiteral("places"), QStringLiteral("4")},
                                          {QStringLiteral("condition"), QStringLiteral("new")}});
        fresh.describe(what.get());
        QTRY_VERIFY(!fresh.gathering().isEmpty());
        QCOMPARE(fresh.condition(), QStringLiteral("As found: new"));
        const Id id = fresh.gathering().toStdString();
        shop.say(journal::wireAnswered(shop.job, id, {wiring::Half::Unit, 3, 1}, wiring::Answer::AsItShouldBe,
                                       serving("stop lamp")));
        shop.say(journal::wireAnswered(shop.job, id, {wiring::Half::Unit, 4, 1}, wiring::Answer::AsItShouldBe,
                                       serving("hazard")));
        const auto later = shop.session();
        CarryView view;
        view.setSession(later.get());
        view.setGathering(fresh.gathering());
        view.componentComplete();
        QCOMPARE(view.carried()->count(), 1);
        QCOMPARE(view.toSay(), 1);
        QCOMPARE(view.found()->count(), 1); // the hazard's place
        QCOMPARE(view.measures()->count(), 1);
        QCOMPARE(view.trials()->count(), 1);
        QCOMPARE(view.placesOf(view.trials()->lines()[0].id).size(), 2);
        view.takeOver();
        QTRY_COMPARE(view.toSay(), 0);
        view.seenAt(view.measures()->lines()[0].id, 0); // is never tried, so never found by trying
        view.seenAt(view.trials()->lines()[0].id, 1);
        QTRY_COMPARE(view.trials()->count(), 0);
        QCOMPARE(view.carried()->count(), 2);
        const auto job = shop.stored();
        const auto* map = job::findGathering(job, id);
        const auto* stop = map->find({wiring::Half::Loom, 3, 1});
        QVERIFY(stop != nullptr);
        QVERIFY(stop->answer(wiring::Answer::AsItShouldBe)->wire.colour ==
                answerOf(colour::Insulation::GN, colour::Insulation::WH).wire.colour);
        const auto* horn = map->find({wiring::Half::Loom, 2, 1});
        QVERIFY(horn != nullptr);
        QCOMPARE(horn->answer(wiring::Answer::AsItShouldBe)->wire.function, std::string("horn"));
        QVERIFY(map->find({wiring::Half::Loom, 1, 1}) == nullptr);
        GatheringView shown;
        shown.setSession(later.get());
        shown.setGathering(fresh.gathering());
        shown.componentComplete();
        QCOMPARE(shown.places()->lines()[3].more, QStringLiteral("leave empty"));
    }

    void proofsAreTickedOneByOneAndSaidTogether() {
        const LiftShop shop;
        shop.say(journal::stepRefitted(shop.job, shop.lastStep));
        shop.say(journal::stepRefitted(shop.job, shop.step));
        const auto session = shop.session();
        const auto leaving = on<HandOverView>(*session);
        QVERIFY(leaving->stopped());
        QCOMPARE(leaving->warnings()->lines().front().more, QStringLiteral("ProofsPage"));
        const auto view = on<ProofsView>(*session);
        QCOMPARE(view->guarded()->count(), 2); // the brake's try, its bolt
        QCOMPARE(view->others()->count(), 2);  // torque, wires
        QCOMPARE(view->others()->lines()[0].mark, QStringLiteral("torque"));
        const auto draft = form(*session, {{QStringLiteral("how"), QStringLiteral("on the lift")}});
        view->keep(draft.get()); // nothing is ticked
        view->setTicked({QStringLiteral("made up")});
        QVERIFY(view->ticked().isEmpty());
        for (const Line& line : view->guarded()->lines())
            view->setTicked(view->toggled(line.id));
        QCOMPARE(view->ticked().size(), 2);
        view->setTicked(view->toggled(view->ticked().front()));
        QCOMPARE(view->ticked().size(), 1);
        view->setTicked(view->toggled(view->guarded()->lines()[0].id));
        view->keep(draft.get());
        QTRY_COMPARE(view->guarded()->count(), 0);
        QCOMPARE(view->proved()->count(), 2);
        QVERIFY(view->proved()->lines()[0].detail.contains(QStringLiteral("on the lift")));
        QCOMPARE(view->others()->count(), 2); // nothing ticked them
        QVERIFY(!job::mayLeave(shop.stored()));
        session->undoLast();
        QTRY_COMPARE(view->guarded()->count(), 2);
    }
};

QTEST_MAIN(WholeTest)
#include "whole_test.moc"
