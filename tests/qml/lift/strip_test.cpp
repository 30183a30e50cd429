// The strip step: a draft on each change, said as a whole, corrected, undone.
#include "liftshop.h"

#include "qml/strip/stripview.h"
#include "qml/wiring/gatheringview.h"
#include "qml/wiring/placeview.h"

#include <QSignalSpy>
#include <QTest>

using namespace undercowl;
using namespace undercowl::ui;

namespace {

std::unique_ptr<StripView> stripOn(ShopSession& session, const QString& corrects = {}) {
    auto view = std::make_unique<StripView>();
    view->setProperty("corrects", corrects);
    view->setSession(&session);
    view->componentComplete();
    if (!QTest::qWaitFor([&] { return view->begun(); }))
        qFatal("the draft was not read");
    return view;
}

} // namespace

class StripTest : public QObject {
    Q_OBJECT

private slots:
    void aStepIsSaidWithWhatBelongsToIt() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto view = stripOn(*session);
        QCOMPARE(view->number(), 3);
        view->keep();
        QVERIFY(!view->errors()[QStringLiteral("title")].toString().isEmpty());
        view->setTitle(QStringLiteral("unplug the battery connector"));
        QVERIFY(!view->cautions().isEmpty());
        view->addHardware(2, QStringLiteral("screw"), QStringLiteral("M5"), QStringLiteral("16 mm"),
                          QStringLiteral("4,5"));
        view->setBag(QStringLiteral("9"));
        view->nameTask(QStringLiteral("battery"));
        const Id id = view->claim().toStdString();
        const QSignalSpy kept(view.get(), &StripView::kept);
        view->keep();
        view->keep(); // a second touch says nothing twice
        QTRY_COMPARE(kept.count(), 1);
        const auto job = shop.stored();
        QCOMPARE(job.steps.size(), std::size_t{3});
        const auto* step = job::findStep(job, id);
        QVERIFY(step != nullptr);
        QCOMPARE(step->bag, std::string("9"));
        QCOMPARE(step->hardware.at(0).torque->digits, std::string("4.5"));
        QCOMPARE(step->hardware.at(0).torque->unit, std::string("N.m"));
        QCOMPARE(job::findTask(job, step->task)->title, std::string("battery"));
        QVERIFY(!step->cautions.empty());
        QCOMPARE(view->title(), QString());
        QCOMPARE(view->tasks().value(view->task()), QStringLiteral("battery"));

        session->undoLast();
        QTRY_COMPARE(shop.stored().steps.size(), std::size_t{2});
    }

    void aTorqueThatIsNoneIsRefusedByName() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto view = stripOn(*session);
        view->addHardware(1, QStringLiteral("bolt"), {}, {}, QStringLiteral("12 bar"));
        QVERIFY(view->errors().contains(QStringLiteral("torque")));
        QCOMPARE(view->hardware()->count(), 0);
    }

    void whatIsEnteredSurvivesTheScreenAndTheApp() {
        const LiftShop shop;
        {
            const auto session = shop.session();
            const auto view = stripOn(*session);
            view->setTitle(QStringLiteral("take the horn off"));
            view->addHardware(1, QStringLiteral("nut"), QStringLiteral("M8"), {}, {});
        }
        const auto session = shop.session();
        const auto view = stripOn(*session);
        QCOMPARE(view->title(), QStringLiteral("take the horn off"));
        QCOMPARE(view->hardware()->count(), 1);
    }

    void aCorrectionReplacesTheStep() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto view = stripOn(*session, QString::fromStdString(shop.step));
        QCOMPARE(view->bag(), QStringLiteral("7"));
        view->setBag(QStringLiteral("17"));
        const QSignalSpy kept(view.get(), &StripView::kept);
        view->keep();
        QTRY_COMPARE(kept.count(), 1);
        const auto job = shop.stored();
        QCOMPARE(job.steps.size(), std::size_t{2});
        QCOMPARE(job::findStep(job, shop.step)->bag, std::string("17"));
        QCOMPARE(job.steps.front().id, shop.step); // it keeps its place in the order
    }

    void twinsAreNamedAndTagged() {
        const LiftShop shop;
        shop.answer();
        const auto session = shop.session();
        GatheringView view;
        view.setGathering(QString::fromStdString(shop.gathering));
        view.setSession(session.get());
        view.componentComplete();
        QCOMPARE(view.places()->count(), 6);
        QCOMPARE(view.twins()->count(), 1);
        QVERIFY2(view.twins()->lines()[0].title.contains(QStringLiteral("2 and 3")),
                 qPrintable(view.twins()->lines()[0].title));
        view.tagTwins(view.twins()->lines()[0].id);
        QTRY_VERIFY(view.twins()->lines()[0].on);
        const auto job = shop.stored();
        QCOMPARE(job.gatherings[0].find({wiring::Half::Loom, 2, 1})->tag, std::string("A"));
        QCOMPARE(job.gatherings[0].find({wiring::Half::Loom, 3, 1})->tag, std::string("B"));
    }

    void wiresThatOnlyThisMechanicTakesForOneAnotherAreNamed() {
        const LiftShop shop;
        shop.answer();
        for (const auto& [number, colour] :
             {std::pair{5, colour::Insulation::BN}, std::pair{6, colour::Insulation::GN}})
            shop.say(journal::wireAnswered(shop.job, shop.gathering, {wiring::Half::Loom, number, 1},
                                           wiring::Answer::AsFound, answerOf(colour)));
        const auto session = shop.session();
        const auto advice = [&] {
            GatheringView view;
            view.setGathering(QString::fromStdString(shop.gathering));
            view.setSession(session.get());
            view.componentComplete();
            QStringList all;
            for (const Line& line : view.twins()->lines())
                all += line.title;
            return all.join(u'|');
        };
        QVERIFY2(!advice().contains(QStringLiteral("To you")), qPrintable(advice()));
        session->set(QStringLiteral("vision"), QStringLiteral("green"));
        QVERIFY2(advice().contains(QStringLiteral("To you places 5 and 6 look alike: brown and green.")),
                 qPrintable(advice()));
        QVERIFY2(advice().contains(QStringLiteral("every wire can be told apart")), qPrintable(advice()));
        session->set(QStringLiteral("vision-degree"), QStringLiteral("slight"));
        QVERIFY2(!advice().contains(QStringLiteral("5 and 6")), qPrintable(advice()));
    }

    void answersAreKeptApartAndASourceIsAskedFor() {
        const LiftShop shop;
        shop.answer();
        const auto session = shop.session();
        PlaceView view;
        view.setProperty("gathering", QString::fromStdString(shop.gathering));
        view.setProperty("half", QStringLiteral("loom"));
        view.setPlace(QStringLiteral("1/1"));
        view.setSession(session.get());
        view.componentComplete();
        view.setTerminal(1, QStringLiteral("6,3"));
        view.setWhich(QStringLiteral("as it should be"));
        view.pick(QStringLiteral("BN"), {}, {});
        QVERIFY(view.errors().contains(QStringLiteral("source")));
        view.pick(QStringLiteral("BN"), {}, QStringLiteral("manual, page 7-12"));
        QTRY_VERIFY(view.differs());
        const auto job = shop.stored();
        const auto* place = job.gatherings[0].find({wiring::Half::Loom, 1, 1});
        QCOMPARE(place->answer(wiring::Answer::AsFound)->wire.colour.base, colour::Insulation::GN);
        QCOMPARE(wiring::text(place->answer(wiring::Answer::AsFound)->wire.terminal),
                 std::string("blade 6.3"));
        QCOMPARE(place->answer(wiring::Answer::AsItShouldBe)->source, std::string("manual, page 7-12"));
    }
};

QTEST_MAIN(StripTest)
#include "strip_test.moc"
