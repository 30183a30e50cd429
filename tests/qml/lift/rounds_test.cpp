// Checks one at a time: rounds, what works when the machine comes in, the guided photos, the shop's lists.
#include "forms.h"

#include "core/journal/rounds.h"
#include "core/journal/saywork.h"
#include "qml/lookover/findings.h"
#include "qml/rounds/functionsview.h"
#include "qml/rounds/roundlistsview.h"
#include "qml/rounds/roundsview.h"
#include "qml/rounds/roundview.h"
#include "qml/rounds/viewsview.h"

#include <QSignalSpy>
#include <QTest>

using namespace undercowl;
using namespace undercowl::ui;

namespace {

job::Round twoChecks() {
    job::Round round;
    round.id = "round-1";
    round.key = "every";
    round.title = "Every machine";
    round.checks.resize(3);
    round.checks[0].text = "lever firm";
    round.checks[1].text = "horn";
    round.checks[2].text = "tyres";
    return round;
}

std::unique_ptr<RoundView> walkOn(ShopSession& session) {
    auto view = std::make_unique<RoundView>();
    view->setProperty("round", QStringLiteral("round-1"));
    view->setSession(&session);
    view->componentComplete();
    return view;
}

} // namespace

class RoundsTest : public QObject {
    Q_OBJECT

private slots:
    void aRoundIsPutTogetherOfWhatTheMachineHas() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto view = on<RoundsView>(*session);
        const QSignalSpy begun(view.get(), &RoundsView::roundBegun);
        view->begin({QStringLiteral("two-stroke"), QStringLiteral("kick"), QStringLiteral("front-drum")});
        view->begin({QStringLiteral("two-stroke")}); // a second touch begins no second round
        QTRY_COMPARE(begun.count(), 1);
        QCOMPARE(view->begun()->count(), 1);
        const auto job = shop.stored();
        QCOMPARE(job.rounds.size(), std::size_t{1});
        QVERIFY(job.rounds[0].title.find("Two-stroke") != std::string::npos);
        QVERIFY(job.rounds[0].title.find("disc") == std::string::npos);
    }

    void eachCheckEndsInAnAnswerAndTheNextComes() {
        const LiftShop shop;
        shop.say(journal::roundBegun(shop.job, twoChecks()));
        const auto session = shop.session();
        const auto view = walkOn(*session);
        QCOMPARE(view->check(), QStringLiteral("lever firm"));
        view->fine();
        QTRY_COMPARE(view->check(), QStringLiteral("horn"));
        view->notDone();
        QTRY_COMPARE(view->check(), QStringLiteral("tyres"));
        view->back();
        QCOMPARE(view->answered(), QStringLiteral("not done"));
        view->fine(); // said again: the last word holds
        QTRY_COMPARE(view->check(), QStringLiteral("tyres"));
        const auto findings = on<Findings>(*session);
        const auto draft = form(*session, {{QStringLiteral("text"), QStringLiteral("front tyre cracked")},
                                           {QStringLiteral("severity"), QStringLiteral("unsafe")}});
        findings->noteFor(draft.get(), QStringLiteral("round-1"), QStringLiteral("tyres"));
        QTRY_VERIFY(view->finished());
        QCOMPARE(view->open(), 0);
        QCOMPARE(view->lines()->lines()[2].more, QStringLiteral("finding: front tyre cracked"));
        const auto job = shop.stored();
        QCOMPARE(*job.rounds[0].checks[1].answer, job::CheckAnswer::Fine);
        QCOMPARE(job.rounds[0].checks[2].finding, job.findings[0].id);
        session->undoLast(); // the finding and the answer go together
        QTRY_COMPARE(view->open(), 1);
        QVERIFY(shop.stored().findings.empty());
    }

    void whatIsPassedOverComesAgain() {
        const LiftShop shop;
        shop.say(journal::roundBegun(shop.job, twoChecks()));
        const auto session = shop.session();
        const auto view = walkOn(*session);
        view->goTo(2);
        view->fine();
        QTRY_COMPARE(view->check(), QStringLiteral("lever firm"));
    }

    void functionsAreTriedOneByOne() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto view = on<FunctionsView>(*session);
        QTRY_COMPARE(view->check(), QStringLiteral("starts"));
        const int all = view->count();
        view->answer(1, QStringLiteral("only with a push"));
        QTRY_COMPARE(view->open(), all - 1);
        QVERIFY(view->check() != QStringLiteral("starts"));
        const auto job = shop.stored();
        QCOMPARE(job.functions.size(), std::size_t{1});
        QCOMPARE(job.functions[0].answer, job::FunctionAnswer::DoesNot);
        QCOMPARE(job.functions[0].note, std::string("only with a push"));
    }

    void viewsArePhotographedOrPassedOver() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto view = on<ViewsView>(*session);
        QTRY_COMPARE(view->check(), QStringLiteral("from the left"));
        view->skip();
        QCOMPARE(view->check(), QStringLiteral("from the right"));
        PhotoToKeep photo{.file = QStringLiteral(UNDERCOWL_PHOTOS "/switch-before.jpg"),
                          .job = shop.job,
                          .purpose = job::PhotoPurpose::AsFound,
                          .about = {},
                          .note = QStringLiteral("from the right")};
        session->keepPhoto(photo);
        QTRY_COMPARE(view->check(), QStringLiteral("from the front"));
        QCOMPARE(view->lines()->lines()[1].mark, QStringLiteral("done"));
    }

    void theShopChangesItsLists() {
        const LiftShop shop;
        const auto session = shop.session();
        RoundListsView view;
        view.setProperty("session", QVariant::fromValue(session.get()));
        view.setProperty("key", QStringLiteral("kick"));
        view.componentComplete();
        QTRY_COMPARE(view.checks()->count(), 1);
        view.add(QStringLiteral("kick start"), QString());
        QVERIFY(!view.error().isEmpty());
        view.add(QStringLiteral("kick start"), QStringLiteral("lever clears the footrest"));
        QTRY_COMPARE(view.checks()->count(), 2);
        view.change(0, QString());
        QTRY_COMPARE(view.checks()->count(), 1);
        QCOMPARE(view.checks()->lines()[0].title, QStringLiteral("lever clears the footrest"));
        session->undoLast();
        QTRY_COMPARE(view.checks()->count(), 2);
    }
};

QTEST_MAIN(RoundsTest)
#include "rounds_test.moc"
