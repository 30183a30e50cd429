// Refitting backwards, and the wiring read back wire by wire.
#include "liftshop.h"

#include "qml/refit/readbackview.h"
#include "qml/refit/refitview.h"

#include <QTest>

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
};

QTEST_MAIN(RefitTest)
#include "refit_test.moc"
