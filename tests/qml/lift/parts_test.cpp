// Parts with all that is known of them, the list of everything to order, fluids before they are used.
#include "forms.h"

#include "core/journal/say.h"
#include "qml/parts/consumablesview.h"
#include "qml/parts/ordersview.h"
#include "qml/parts/partform.h"
#include "qml/shell/jobview.h"

#include <QFile>
#include <QSignalSpy>
#include <QTest>

using namespace undercowl;
using namespace undercowl::ui;

namespace {

job::Part shoes() {
    job::Part part;
    part.id = "part-1";
    part.name = "brake shoes";
    part.number = "QX-1";
    return part;
}

void open(PartForm& view, ShopSession& session) {
    view.setProperty("part", QStringLiteral("part-1"));
    view.setSession(&session);
    view.componentComplete();
}

} // namespace

class PartsTest : public QObject {
    Q_OBJECT

private slots:
    void aPartHoldsAllThatIsKnownOfIt() {
        const LiftShop shop;
        shop.say(journal::partStated(shop.job, shoes()));
        const auto session = shop.session();
        PartForm view;
        open(view, *session);
        const auto draft = form(*session, view.known());
        draft->set(QStringLiteral("price"), QStringLiteral("1.234,50"));
        draft->set(QStringLiteral("fitted"), QStringLiteral("3"));
        view.keep(draft.get());
        QCOMPARE(view.errors().keys(),
                 (QStringList{QStringLiteral("currency"), QStringLiteral("fit"), QStringLiteral("price")}));
        draft->set(QStringLiteral("price"), QStringLiteral("18,50"));
        draft->set(QStringLiteral("currency"), QStringLiteral("eur"));
        draft->set(QStringLiteral("fit"), QStringLiteral("pivot too small"));
        draft->set(QStringLiteral("supplier"), QStringLiteral("Harbour parts"));
        draft->set(QStringLiteral("other"), QStringLiteral("KX-12"));
        draft->set(QStringLiteral("about"), view.subjectId(0));
        draft->set(QStringLiteral("state"), QStringLiteral("4"));
        const QSignalSpy kept(&view, &PartForm::kept);
        view.keep(draft.get());
        QTRY_COMPARE(kept.count(), 1);
        const auto part = shop.stored().parts.at(0);
        QCOMPARE(*part.price, (job::TypedValue{"18.50", "EUR"}));
        QCOMPARE(part.fitted, job::PartFit::DoesNotFit);
        QCOMPARE(part.state, job::PartState::Wrong);
        QCOMPARE(part.about, shop.step);
        QCOMPARE(part.otherNumbers, std::string("KX-12"));
        QCOMPARE(part.number, std::string("QX-1")); // was not touched
        QCOMPARE(view.known()[QStringLiteral("fit")].toString(), QStringLiteral("pivot too small"));
    }

    void aPartThatIsNotNeededAfterAllIsWaitedForNoMore() {
        const LiftShop shop;
        shop.say(journal::partStated(shop.job, shoes()));
        const auto session = shop.session();
        JobView job;
        job.setSession(session.get());
        job.componentComplete();
        QCOMPARE(job.parts()->count(), 1);
        PartForm view;
        open(view, *session);
        const auto draft = form(*session, view.known());
        draft->set(QStringLiteral("state"),
                   QString::number(view.states().indexOf(QStringLiteral("not needed"))));
        view.keep(draft.get());
        QTRY_COMPARE(shop.stored().parts.at(0).state, job::PartState::NotNeeded);
        QTRY_COMPARE(job.parts()->count(), 0);
        QVERIFY(job.came().isEmpty()); // nor is it said to be here
    }

    void theOldOneBesideTheNewOneIsSeenWithThePart() {
        const LiftShop shop;
        shop.say(journal::partStated(shop.job, shoes()));
        const auto session = shop.session();
        PartForm view;
        open(view, *session);
        QVERIFY(view.photo().isEmpty());
        const QString taken = QStringLiteral(UNDERCOWL_PHOTOS "/rear-terminals.jpg");
        session->keepPhoto({.file = taken, .job = shop.job, .purpose = {}, .about = "part-1", .note = {}});
        QTRY_VERIFY(!view.photo().isEmpty());
        QFile kept(view.photo().toLocalFile());
        QFile before(taken);
        QVERIFY(kept.open(QIODevice::ReadOnly) && before.open(QIODevice::ReadOnly));
        QCOMPARE(kept.size(), before.size());
    }

    void everythingToOrderIsOneList() {
        const LiftShop shop;
        auto part = shoes();
        part.supplier = "Harbour parts";
        part.price = job::TypedValue{"18.50", "EUR"};
        shop.say(journal::partStated(shop.job, part));
        part = shoes();
        part.id = "part-2";
        part.name = "bulb";
        shop.say(journal::partStated(shop.job, part));
        const auto session = shop.session();
        OrdersView view;
        view.setProperty("session", QVariant::fromValue(session.get()));
        view.componentComplete();
        QTRY_COMPARE(view.lines()->count(), 4);
        QCOMPARE(view.lines()->lines()[0].title, QStringLiteral("Harbour parts"));
        QVERIFY(view.asText().contains(QStringLiteral("brake shoes, QX-1, Marrowin Tern 125, 1987")));
        view.write();
        QTRY_COMPARE_WITH_TIMEOUT(view.files().size(), 3, 20000);
        QFile csv(view.folder() + u'/' + view.files()[1]);
        QVERIFY(csv.open(QIODevice::ReadOnly));
        QVERIFY(csv.readAll().contains("Harbour parts,brake shoes,QX-1"));
        QFile pdf(view.folder() + u'/' + view.files()[0]);
        QVERIFY(pdf.open(QIODevice::ReadOnly) && pdf.read(5) == "%PDF-");
    }

    // Brake fluid on glycol draws water: FMVSS 116 names the grades; the year is common practice, no source.
    void aFluidIsSpokenAgainstBeforeItGoesIn() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto view = on<ConsumablesView>(*session);
        const auto draft = form(*session, {{QStringLiteral("what"), QStringLiteral("brake fluid")},
                                           {QStringLiteral("grade"), QStringLiteral("DOT 5")},
                                           {QStringLiteral("limit"), QStringLiteral("DOT 3, DOT 4")}});
        view->setDraft(draft.get());
        QVERIFY(view->against().join(u' ').contains(QStringLiteral("silicone")));
        draft->set(QStringLiteral("grade"), QStringLiteral("DOT 4"));
        draft->set(QStringLiteral("opened"), QStringLiteral("2020-01-01"));
        QVERIFY(view->against().join(u' ').contains(QStringLiteral("opened")));
        session->set(QStringLiteral("fluid-days"), QStringLiteral("10000"));
        QVERIFY(view->against().isEmpty());
        view->use();
        QTRY_COMPARE(view->used()->count(), 1);
        QCOMPARE(shop.stored().consumables.at(0).grade, std::string("DOT 4"));
        QVERIFY(!draft->begun());
    }
};

QTEST_MAIN(PartsTest)
#include "parts_test.moc"
