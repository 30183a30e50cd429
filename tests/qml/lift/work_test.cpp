// What goes with the work: the watch, the order of tasks, what is done afterwards, the owner's word, leaving.
#include "forms.h"

#include "core/job/leaving.h"
#include "core/job/proving.h"
#include "core/job/refit.h"
#include "core/journal/sayclosing.h"
#include "core/journal/saywork.h"
#include "qml/handover/handoverview.h"
#include "qml/lookover/findings.h"
#include "qml/lookover/ownersword.h"
#include "qml/refit/afterwardsview.h"
#include "qml/refit/needsview.h"
#include "qml/shell/taskview.h"

#include <QTest>

using namespace undercowl;
using namespace undercowl::ui;

namespace {

const QString brakeWork = QStringLiteral("try the brake: it holds, and it lets go");

// What is to be done afterwards stays open; the rest is proved.
void refitAll(const LiftShop& shop) {
    shop.say(journal::stepRefitted(shop.job, shop.lastStep));
    shop.say(journal::stepRefitted(shop.job, shop.step));
    for (const job::ToProve& proof : job::openProofs(shop.stored()))
        if (proof.kind != job::ProofKind::Afterwards)
            shop.say(journal::proofGiven(shop.job,
                                         {proof.subject, proof.what, false, "wrench set, it clicked", {}}));
}

} // namespace

class WorkTest : public QObject {
    Q_OBJECT

private slots:
    void aMachineDoesNotLeaveBeforeTheBrakeIsTried() {
        const LiftShop shop;
        refitAll(shop);
        const auto session = shop.session();
        const auto leaving = on<HandOverView>(*session);
        QVERIFY(leaving->stopped());
        leaving->handOver({});
        QVERIFY(!shop.stored().handedOver);
        const auto view = on<AfterwardsView>(*session);
        QCOMPARE(view->open()->count(), 1);
        QCOMPARE(view->open()->lines()[0].title, brakeWork);
        QCOMPARE(view->open()->lines()[0].mark, QStringLiteral("ride"));
        QCOMPARE(view->bans(), QStringList{QStringLiteral("Do not ride: ") + brakeWork});
        view->done(QString::fromStdString(shop.lastStep), brakeWork);
        QTRY_COMPARE(view->open()->count(), 0);
        QVERIFY(view->bans().isEmpty());
        QVERIFY(!leaving->stopped());
        leaving->handOver({});
        leaving->handOver({}); // what the owner said has no answer: all the same
        QTRY_VERIFY(leaving->handedOver());
        QVERIFY(shop.stored().handedOver.has_value());
        session->undoLast();
        QTRY_VERIFY(!shop.stored().handedOver.has_value());
    }

    void leavingItOutWantsAReason() {
        const LiftShop shop;
        refitAll(shop);
        const auto session = shop.session();
        const auto view = on<AfterwardsView>(*session);
        view->leaveOut(QString::fromStdString(shop.lastStep), brakeWork, QStringLiteral("  "));
        QVERIFY(view->errors().contains(QStringLiteral("reason")));
        view->leaveOut(QString::fromStdString(shop.lastStep), brakeWork, QStringLiteral("goes on a trailer"));
        QTRY_COMPARE(view->left()->count(), 1);
        QCOMPARE(view->left()->lines()[0].aside, QStringLiteral("goes on a trailer"));
        QVERIFY(!view->bans().isEmpty()); // still not to be ridden
        QVERIFY(job::mayLeave(shop.stored()));
    }

    void needsAreSuggestedAndCanBeChanged() {
        const LiftShop shop;
        const auto session = shop.session();
        NeedsView view;
        view.setSession(session.get());
        view.setStep(QString::fromStdString(shop.lastStep));
        view.componentComplete();
        QVERIFY(view.suggested());
        QCOMPARE(view.afterwards(), QStringList{brakeWork});
        const auto draft = form(*session, {{QStringLiteral("renew"), QStringLiteral("split pin\n\n e-clip ")},
                                           {QStringLiteral("noStart"), QStringLiteral("yes")}});
        view.keep(draft.get());
        QTRY_VERIFY(!view.suggested());
        QCOMPARE(view.renew(), (QStringList{QStringLiteral("split pin"), QStringLiteral("e-clip")}));
        QVERIFY(view.afterwards().isEmpty());
        QCOMPARE(view.bans().size(), 1);
    }

    void theWatchRunsAndStopsWithOneTouch() {
        const LiftShop shop;
        const auto session = shop.session();
        TaskView view;
        view.setSession(session.get());
        view.setTask(QString::fromStdString(shop.task));
        view.componentComplete();
        QVERIFY(!view.running());
        view.startOrStop();
        QTRY_VERIFY(view.running());
        view.startOrStop();
        QTRY_VERIFY(!view.running());
        const auto job = shop.stored();
        QCOMPARE(job.spans.size(), std::size_t{1});
        QVERIFY(job.spans[0].stopped.has_value());
    }

    void aTaskComesAfterAnotherAndNoCircleIsMade() {
        const LiftShop shop;
        shop.say(journal::taskNamed(shop.job, {"bearing", "bearing", false, "", 1}));
        const auto session = shop.session();
        TaskView view;
        view.setSession(session.get());
        view.setTask(QString::fromStdString(shop.task));
        view.componentComplete();
        view.comesAfter(QStringLiteral("bearing"));
        QTRY_VERIFY(view.others()->lines()[0].on);
        QVERIFY(!job::nextRefit(shop.stored()));
        TaskView bearing;
        bearing.setSession(session.get());
        bearing.setTask(QStringLiteral("bearing"));
        bearing.componentComplete();
        bearing.comesAfter(QString::fromStdString(shop.task));
        QVERIFY(bearing.errors().contains(QStringLiteral("after")));
        bearing.finish();
        QTRY_COMPARE(bearing.state(), QStringLiteral("finished"));
        QVERIFY(job::nextRefit(shop.stored()).has_value());
    }

    void aRefusalNeedsANameAndAWay() {
        const LiftShop shop;
        shop.say(journal::findingNoted(shop.job,
                                       {"tyre", "tyre cracked", job::Severity::Unsafe, "", false, "", {}}));
        const auto session = shop.session();
        QVERIFY(!job::mayLeave(shop.stored()));
        OwnersWord word;
        word.setSession(session.get());
        word.setFinding(QStringLiteral("tyre"));
        word.componentComplete();
        const auto draft = form(*session, {});
        word.refuse(draft.get());
        QVERIFY(word.errors().contains(QStringLiteral("by")));
        QVERIFY(word.errors().contains(QStringLiteral("way")));
        draft->set(QStringLiteral("by"), QStringLiteral("Ilse Quandt"));
        draft->set(QStringLiteral("way"), QStringLiteral("0"));
        word.refuse(draft.get());
        QTRY_VERIFY(session->job()->findings[0].refused.has_value());
        QVERIFY(job::mayLeave(shop.stored()));
        const auto findings = on<Findings>(*session);
        QVERIFY(findings->open()->lines()[0].more.startsWith(QStringLiteral("Ilse Quandt")));
    }

    void anApprovalHoldsTheSumAsTyped() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto word = on<OwnersWord>(*session);
        const auto draft = form(*session, {{QStringLiteral("what"), QStringLiteral("tyres")},
                                           {QStringLiteral("by"), QStringLiteral("Ilse")},
                                           {QStringLiteral("way"), QStringLiteral("2")},
                                           {QStringLiteral("sum"), QStringLiteral("1e3")}});
        word->approve(draft.get(), true);
        QVERIFY(word->errors().contains(QStringLiteral("sum")));
        QVERIFY(word->errors().contains(QStringLiteral("currency")));
        draft->set(QStringLiteral("sum"), QStringLiteral("120,50"));
        draft->set(QStringLiteral("currency"), QStringLiteral("eur"));
        word->approve(draft.get(), true);
        QTRY_COMPARE(word->approvals()->count(), 1);
        QCOMPARE(shop.stored().approvals[0].sum->digits, std::string("120.50"));
        QCOMPARE(shop.stored().approvals[0].how, std::string("stood here"));
    }

    void aFindingBecomesOneTask() {
        const LiftShop shop;
        shop.say(journal::findingNoted(
            shop.job, {"tyre", "tyre cracked", job::Severity::Soon, "new tyre", false, "", {}}));
        const auto session = shop.session();
        const auto findings = on<Findings>(*session);
        findings->makeTask(QStringLiteral("tyre"));
        findings->makeTask(QStringLiteral("tyre")); // before the first was saved
        QTRY_COMPARE(session->job()->tasks.size(), std::size_t{2});
        findings->makeTask(QStringLiteral("tyre"));
        QTRY_COMPARE(session->saving(), ShopSession::Saving::Saved);
        QCOMPARE(shop.stored().tasks.size(), std::size_t{2});
        QCOMPARE(shop.stored().tasks[1].title, std::string("new tyre"));
    }
};

QTEST_MAIN(WorkTest)
#include "work_test.moc"
