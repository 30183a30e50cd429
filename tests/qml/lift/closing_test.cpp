// Proving, road test, rechecks, cost and signature over a real store.
#include "forms.h"

#include "core/job/leaving.h"
#include "core/job/proving.h"
#include "core/journal/say.h"
#include "core/journal/sayclosing.h"
#include "core/journal/saywork.h"
#include "qml/handover/costview.h"
#include "qml/handover/handoverview.h"
#include "qml/handover/signatureview.h"
#include "qml/lookover/findings.h"
#include "qml/lookover/settleview.h"
#include "qml/prove/dueview.h"
#include "qml/prove/proveview.h"
#include "qml/prove/roadview.h"
#include "qml/rounds/functionsview.h"

#include <QFile>
#include <QImage>
#include <QMouseEvent>
#include <QQuickWindow>
#include <QSignalSpy>
#include <QTest>

#include <algorithm>

using namespace undercowl;
using namespace undercowl::ui;

namespace {

void refitAll(const LiftShop& shop) {
    shop.say(journal::stepRefitted(shop.job, shop.lastStep));
    shop.say(journal::stepRefitted(shop.job, shop.step));
}

void proveAll(const LiftShop& shop) {
    for (const job::ToProve& proof : job::openProofs(shop.stored()))
        shop.say(proof.kind == job::ProofKind::Afterwards
                     ? journal::refitSeenTo(shop.job, proof.subject, proof.what, false, "tried")
                     : journal::proofGiven(shop.job, {proof.subject, proof.what, false, "tried", {}}));
}

void stroke(QQuickWindow& window, const QList<QPoint>& along) {
    QTest::mousePress(&window, Qt::LeftButton, {}, along.front());
    for (const QPoint& at : along)
        QTest::mouseMove(&window, at);
    QTest::mouseRelease(&window, Qt::LeftButton, {}, along.back());
}

} // namespace

class ClosingTest : public QObject {
    Q_OBJECT

private slots:
    void theRecordSpeaksTheLanguageOfItsOwner() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto leaving = on<HandOverView>(*session);
        const auto says = [&](const char* title) {
            return std::ranges::any_of(leaving->record()->lines(), [&](const Line& line) {
                return line.title == QString::fromUtf8(title);
            });
        };
        QCOMPARE(leaving->language(), 0); // the app's
        QVERIFY(says("Before you ride"));
        leaving->setLanguage(static_cast<int>(leaving->languages().indexOf(QStringLiteral("Deutsch"))));
        QVERIFY(says("Vor der Fahrt"));
        QVERIFY(!says("Before you ride"));
        leaving->setLanguage(static_cast<int>(leaving->languages().indexOf(QStringLiteral("Français"))));
        QVERIFY(says("Avant de rouler"));
    }

    void theHandOverWaitsForWhatWasDisturbed() {
        const LiftShop shop;
        const auto early = shop.session();
        QCOMPARE(on<ProveView>(*early)->apart(), 4); // nothing is on again: nothing can be proved
        refitAll(shop);
        const auto session = shop.session();
        const auto leaving = on<HandOverView>(*session);
        const auto view = on<ProveView>(*session);
        QCOMPARE(view->count(), 4); // torque, wires; brake, bolt
        QCOMPARE(view->open(), 4);
        view->leaveOut(QStringLiteral(" "));
        QVERIFY(view->errors().contains(QStringLiteral("reason")));
        while (!view->finished()) {
            QVERIFY(leaving->stopped());
            const int before = view->open();
            if (before == 2)
                view->leaveOut(QStringLiteral("no meter here"));
            else
                view->proved(QStringLiteral("tried"));
            QTRY_COMPARE(view->open(), before - 1);
        }
        QVERIFY(!leaving->stopped());
        QVERIFY(job::mayLeave(shop.stored()));
        QCOMPARE(view->seconds()->count(), 2); // the brake
        view->second(0, QStringLiteral("  "));
        QVERIFY(view->errors().contains(QStringLiteral("by")));
        view->second(0, QStringLiteral("Bram"));
        QTRY_VERIFY(view->seconds()->lines()[0].on);
        QCOMPARE(view->toSign(), 1);
        QCOMPARE(shop.stored().secondEyes.at(0).by, std::string("Bram"));
        leaving->handOver({}, QStringLiteral("given back"), QStringLiteral("none"));
        QVERIFY(leaving->asking()); // why it came in has no answer
        leaving->handOver({}, QStringLiteral("given back"), QStringLiteral("none"));
        QTRY_VERIFY(leaving->handedOver());
        QCOMPARE(shop.stored().handedOver->oldParts, std::string("given back"));
    }

    void wiresThatDoNotMatchKeepItHereByName() {
        const LiftShop shop;
        for (const int place : {2, 5})
            shop.say(journal::wireAnswered(shop.job, shop.gathering, {wiring::Half::Loom, place, 1},
                                           wiring::Answer::AsFound, answerOf(colour::Insulation::GN)));
        shop.say(journal::wireChecked(
            shop.job,
            {shop.gathering, {wiring::Half::Loom, 5, 1}, job::MatchOutcome::DoesNotMatch, {}, "", {}}));
        refitAll(shop);
        const auto session = shop.session();
        const auto view = on<ProveView>(*session);
        for (int place = 0; place < view->count() && view->way() != u"wires"; ++place)
            view->goTo(place);
        QCOMPARE(view->way(), QStringLiteral("wires"));
        QCOMPARE(view->against(), QStringLiteral("place 5 does not match; not read back: place 2"));
        const int open = view->open();
        view->proved(QStringLiteral("looked at it"));
        QVERIFY(
            view->errors().value(QStringLiteral("reason")).toString().contains(QStringLiteral("place 5")));
        const auto leaving = on<HandOverView>(*session);
        const auto& lines = leaving->warnings()->lines();
        const auto named = std::ranges::find(lines, QStringLiteral("ReadBackPage"), &Line::more);
        QVERIFY(named != lines.end());
        QCOMPARE(named->id, QString::fromStdString(shop.gathering));
        QVERIFY(named->title.contains(QStringLiteral("right switch cluster")));
        QVERIFY(named->title.contains(QStringLiteral("not read back: place 2")));
        view->leaveOut(QStringLiteral("plug comes on Friday"));
        QTRY_COMPARE(view->open(), open - 1);
    }

    void theRecordIsMadeAgainWhenItIsHandedOver() {
        const LiftShop shop;
        refitAll(shop);
        const auto session = shop.session();
        const auto leaving = on<HandOverView>(*session);
        const auto view = on<ProveView>(*session);
        QVERIFY(leaving->stops() > 0); // the button says how many are to be seen to
        QCOMPARE(leaving->signedBy(), QString());
        while (!view->finished()) {
            const int before = view->open();
            view->proved(QStringLiteral("tried"));
            QTRY_COMPARE(view->open(), before - 1);
        }
        QCOMPARE(leaving->stops(), 0);
        bool written = false;
        connect(leaving.get(), &HandOverView::progressed, leaving.get(),
                [&] { written = written || (leaving->handedOver() && leaving->writing()); });
        leaving->handOver({});
        leaving->handOver({}); // all the same
        QTRY_VERIFY(leaving->handedOver());
        QTRY_VERIFY(written); // what was made before would say "not yet"
        QTRY_VERIFY(!leaving->writing());
    }

    void aPartThatIsNotFittedIsNamedBeforeTheHandOver() {
        const LiftShop shop;
        refitAll(shop);
        proveAll(shop);
        shop.say(journal::functionProved(shop.job, {"no stop lamp", job::FunctionAnswer::Works, "", {}}));
        job::Part part;
        part.id = "hose";
        part.name = "rear brake hose";
        part.state = job::PartState::Ordered;
        shop.say(journal::partStated(shop.job, part));
        const auto session = shop.session();
        const auto leaving = on<HandOverView>(*session);
        QVERIFY(!leaving->stopped());
        QCOMPARE(leaving->asks(), QStringList{QStringLiteral("part not fitted: rear brake hose")});
        const auto& lines = leaving->warnings()->lines();
        const auto named = std::ranges::find(lines, QStringLiteral("PartsPage"), &Line::more);
        QVERIFY(named != lines.end());
        QCOMPARE(named->mark, QStringLiteral("soon"));
        QVERIFY(!leaving->asking());
        leaving->handOver({});
        QVERIFY(leaving->asking());
        QVERIFY(!shop.stored().handedOver);
        // Something else asks now: it is named before it counts.
        part.id = "bolt";
        part.name = "banjo bolt";
        session->say({journal::partStated(shop.job, part)}, {.undoText = {}, .form = {}});
        QTRY_COMPARE(leaving->asks().size(), 2);
        QVERIFY(!leaving->asking());
        leaving->handOver({});
        QVERIFY(leaving->asking());
        leaving->handOver({});
        QTRY_VERIFY(leaving->handedOver());
        QVERIFY(std::ranges::any_of(leaving->record()->lines(), [](const Line& line) {
            return line.title == u"Part not fitted: rear brake hose.";
        }));
        QTRY_VERIFY(!leaving->writing());
    }

    void whatMustNotBeRiddenLeavesWithAWordOnHow() {
        const LiftShop shop;
        shop.say(journal::stepRefitted(shop.job, shop.step));
        proveAll(shop);
        shop.say(journal::functionProved(shop.job, {"no stop lamp", job::FunctionAnswer::Works, "", {}}));
        const auto session = shop.session();
        const auto leaving = on<HandOverView>(*session);
        QVERIFY(!leaving->stopped());
        QCOMPARE(leaving->asks().size(), 1); // the brake lever is off
        QCOMPARE(leaving->warnings()->lines()[0].mark, QStringLiteral("unsafe"));
        leaving->handOver({});
        leaving->handOver(QStringLiteral(" "));
        QVERIFY(leaving->errors().contains(QStringLiteral("note")));
        QVERIFY(!shop.stored().handedOver);
        leaving->handOver(QStringLiteral("fetched with a trailer"));
        QTRY_VERIFY(leaving->handedOver());
        QTRY_VERIFY(!leaving->writing());
    }

    void whatTheOwnerSaidIsAnsweredUnderWhatWorksNow() {
        const LiftShop shop;
        refitAll(shop);
        const auto session = shop.session();
        const auto leaving = on<HandOverView>(*session);
        QCOMPARE(on<ProveView>(*session)->unanswered(), 1);
        const auto& lines = leaving->warnings()->lines();
        const auto asked = std::ranges::find(lines, QStringLiteral("FunctionsPage"), &Line::more);
        QVERIFY(asked != lines.end());
        QCOMPARE(asked->title, QStringLiteral("what the owner said has no answer: no stop lamp"));
        FunctionsView view;
        view.setProperty("after", true);
        view.setSession(session.get());
        view.componentComplete();
        QTRY_VERIFY(view.count() > 1);
        QCOMPARE(view.check(), QStringLiteral("no stop lamp"));
        QCOMPARE(view.group(), QStringLiteral("the owner said, when it came in"));
        view.answer(0, QStringLiteral("new switch"));
        QTRY_VERIFY(leaving->asks().isEmpty());
        QCOMPARE(shop.stored().functionsAfter.at(0).what, std::string("no stop lamp"));
        QVERIFY(std::ranges::any_of(leaving->record()->lines(), [](const Line& line) {
            return line.title.contains(u"no stop lamp, the owner's words, ✓ works: new switch");
        }));
    }

    void anUnsafeFindingIsSettledWithWordsAndItsPartNamed() {
        const LiftShop shop;
        shop.say(journal::findingNoted(
            shop.job, {"f", "rear brake hose cracked", job::Severity::Unsafe, "", false, "", {}}));
        job::Part part;
        part.id = "hose";
        part.name = "rear brake hose";
        part.state = job::PartState::Ordered;
        shop.say(journal::partStated(shop.job, part));
        const auto session = shop.session();
        QVERIFY(!on<Findings>(*session)->settle(QStringLiteral("f"), QStringLiteral("done")));
        SettleView view;
        view.setSession(session.get());
        view.setFinding(QStringLiteral("f"));
        view.componentComplete();
        QVERIFY(view.unsafe());
        QCOMPARE(view.notFitted().size(), 1);
        QVERIFY(view.notFitted()[0].startsWith(QStringLiteral("rear brake hose")));
        const auto draft = form(*session, {});
        view.settle(draft.get());
        QVERIFY(view.errors().contains(QStringLiteral("how")));
        draft->set(QStringLiteral("how"), QStringLiteral("hose of the spare machine fitted, bled"));
        view.settle(draft.get());
        QVERIFY(view.asking());
        QVERIFY(!shop.stored().findings.at(0).settled);
        view.settle(draft.get());
        QTRY_VERIFY(shop.stored().findings.at(0).settled);
        QCOMPARE(shop.stored().findings.at(0).settledHow,
                 std::string("hose of the spare machine fitted, bled"));
    }

    void roadTestAndRechecksAreKept() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto view = on<RoadView>(*session);
        const auto test = form(*session, {{QStringLiteral("distance"), QStringLiteral("far")}});
        view->keepTest(test.get());
        QVERIFY(view->errors().contains(QStringLiteral("distance")));
        test->set(QStringLiteral("distance"), QStringLiteral("4,2"));
        view->keepTest(test.get());
        QTRY_COMPARE(view->tests()->count(), 1);
        QCOMPARE(*shop.stored().roadTests.at(0).distance, (job::TypedValue{"4.2", "km"}));
        const auto again = form(*session, {{QStringLiteral("what"), QStringLiteral("axle nut")},
                                           {QStringLiteral("after"), QStringLiteral("50")},
                                           {QStringLiteral("days"), QStringLiteral("x")}});
        view->keepRecheck(again.get());
        QVERIFY(view->errors().contains(QStringLiteral("days")));
        again->set(QStringLiteral("days"), QStringLiteral("0"));
        view->keepRecheck(again.get());
        QTRY_COMPARE(view->rechecks()->count(), 1);
        DueView due;
        due.setProperty("session", QVariant::fromValue(session.get()));
        due.componentComplete();
        QTRY_COMPARE(due.lines()->count(), 1);
        QCOMPARE(due.late(), 1); // due today, and it was said a moment ago
        DueView waits;           // as on the home screen, where the list of machines comes first
        waits.setProperty("session", QVariant::fromValue(session.get()));
        waits.setActive(false);
        waits.componentComplete();
        due.read();
        QTRY_COMPARE(due.lines()->count(), 1); // what was asked after it has been answered
        QVERIFY(!waits.ready());
        waits.setActive(true);
        QTRY_COMPARE(waits.late(), 1);
        view->seen(view->rechecks()->lines()[0].id);
        QTRY_VERIFY(view->rechecks()->lines()[0].on);
        DueView later;
        later.setProperty("session", QVariant::fromValue(session.get()));
        later.componentComplete();
        QTRY_VERIFY(later.ready());
        QCOMPARE(later.lines()->count(), 0);
    }

    void theCostIsReckonedWithTheTermsOfTheShop() {
        const LiftShop shop;
        shop.say(journal::timeStarted(shop.job, "w", shop.task));
        shop.say(journal::timeStopped(shop.job, "w", 70));
        const auto session = shop.session();
        const auto view = on<CostView>(*session);
        QVERIFY(!view->reckoned());
        const auto terms = form(*session, {{QStringLiteral("rate"), QStringLiteral("58,00")},
                                           {QStringLiteral("tax"), QStringLiteral("19%")}});
        view->settle(terms.get());
        QVERIFY(view->errors().contains(QStringLiteral("currency")));
        QVERIFY(view->errors().contains(QStringLiteral("tax")));
        terms->set(QStringLiteral("tax"), QStringLiteral("19"));
        terms->set(QStringLiteral("currency"), QStringLiteral("eur"));
        view->settle(terms.get());
        QTRY_COMPARE(view->gross(), QStringLiteral("80.53\u00A0EUR")); // 67.67 + 12.86
        const auto line = form(*session, {{QStringLiteral("what"), QStringLiteral("tyre fitted")},
                                          {QStringLiteral("sum"), QStringLiteral("10")}});
        view->addLine(line.get());
        QTRY_COMPARE(view->net(), QStringLiteral("77.67\u00A0EUR"));
        view->dropLine(0);
        QTRY_COMPARE(view->net(), QStringLiteral("67.67\u00A0EUR"));
        QCOMPARE(session->setting(QStringLiteral("hour-rate")), QStringLiteral("58.00"));
    }

    void theOwnerSignsWithAFinger() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto view = on<SignatureView>(*session);
        QQuickWindow window;
        window.resize(400, 200);
        auto* pad = new SignaturePad(window.contentItem());
        pad->setSize({400, 200});
        window.show();
        QVERIFY(QTest::qWaitForWindowExposed(&window));
        const auto draft = form(*session, {});
        view->keep(pad, draft.get());
        QVERIFY(view->errors().contains(QStringLiteral("name")));
        QVERIFY(view->errors().contains(QStringLiteral("pad")));
        stroke(window, {{20, 100}, {100, 40}, {200, 160}, {380, 100}});
        QVERIFY(!pad->empty());
        const QImage picture = pad->picture();
        QCOMPARE(picture.width(), 800);
        QCOMPARE(qGray(picture.pixel(200, 80)), 0); // through (100, 40)
        QCOMPARE(qGray(picture.pixel(4, 4)), 255);
        draft->set(QStringLiteral("name"), QStringLiteral("Ilse Quandt"));
        view->keep(pad, draft.get());
        QTRY_VERIFY(view->signedBy().startsWith(QStringLiteral("Ilse Quandt")));
        QCOMPARE(QImage(view->picture().toLocalFile()).size(), picture.size());
        pad->clear();
        QVERIFY(pad->empty());
        QVERIFY(pad->picture().isNull());
    }
};

QTEST_MAIN(ClosingTest)
#include "closing_test.moc"
