// Taking in: what came with the machine, what it will carry, what its frame number tells; the calculations
// take it up.
#include "forms.h"

#include "core/journal/say.h"
#include "qml/calc/calcview.h"
#include "qml/takein/takein.h"

#include <QSignalSpy>
#include <QTest>

using namespace undercowl;
using namespace undercowl::ui;

class TakeInTest : public QObject {
    Q_OBJECT

private slots:
    void whatCameWithTheMachineIsKept() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto draft = form(*session, {{QStringLiteral("model"), QStringLiteral("Tern 125")},
                                           {QStringLiteral("received"), QStringLiteral("two keys")},
                                           {QStringLiteral("rider"), QStringLiteral("8x")},
                                           {QStringLiteral("luggage"), QStringLiteral("12,5")},
                                           {QStringLiteral("reason"), QStringLiteral("no lights")}});
        TakeIn form;
        form.setProperty("session", QVariant::fromValue(session.get()));
        form.setProperty("draft", QVariant::fromValue(draft.get()));
        const QSignalSpy saved(&form, &TakeIn::saved);
        form.save();
        QVERIFY(form.errors().contains(QStringLiteral("rider")));
        draft->set(QStringLiteral("rider"), QStringLiteral("82"));
        form.save();
        QTRY_COMPARE(saved.count(), 1);
        QTRY_COMPARE(session->jobId(), saved.at(0).at(0).toString());
        const auto job = session->job();
        QCOMPARE(job->received, std::string("two keys"));
        QCOMPARE(*job->riderMass, (job::TypedValue{"82", "kg"}));
        QCOMPARE(*job->luggageMass, (job::TypedValue{"12.5", "kg"}));
        QCOMPARE(form.known()[QStringLiteral("luggage")].toString(), QStringLiteral("12.5"));
    }

    // The number with a right check digit is the example of 49 CFR 565, from memory.
    void aFrameNumberIsLookedAtWhileItIsTyped() {
        const LiftShop shop;
        const auto session = shop.session();
        TakeIn form;
        form.setProperty("session", QVariant::fromValue(session.get()));
        QVERIFY(form.frameHint(QString()).isEmpty());
        QVERIFY(form.frameHint(QStringLiteral("1M8GDM9AXKP042788")).contains(QStringLiteral("fits")));
        QVERIFY(form.frameHint(QStringLiteral("1M8GDM9AXKP042789")).contains(QStringLiteral("hint")));
        QVERIFY(form.frameHint(QStringLiteral("1M8GDM9AXKP04278O")).contains(QStringLiteral("0 for I")) ||
                form.frameHint(QStringLiteral("1M8GDM9AXKP04278O")).contains(QStringLiteral("again")));
        QVERIFY(form.frameHint(QStringLiteral("MT125-004711")).contains(QStringLiteral("older")));
    }

    void aMachineThatComesBackIsLinkedToItsJob() {
        const LiftShop shop;
        const auto session = shop.session();
        const Id machine = session->job()->machine;
        const auto draft = form(*session, {{QStringLiteral("frame"), QStringLiteral("mt125 004711")},
                                           {QStringLiteral("reason"), QStringLiteral("lamp dead again")}});
        TakeIn form;
        form.setProperty("session", QVariant::fromValue(session.get()));
        form.setProperty("draft", QVariant::fromValue(draft.get()));
        form.lookForReturn(QStringLiteral("mt1"));
        QCOMPARE(form.returns()->count(), 0);
        form.lookForReturn(QStringLiteral("mt125 004711"));
        QTRY_COMPARE(form.returns()->count(), 1);
        form.comesBackFrom(form.returns()->lines()[0].id);
        QCOMPARE(draft->text(QStringLiteral("model")), QStringLiteral("Tern 125"));
        const QSignalSpy saved(&form, &TakeIn::saved);
        form.save();
        QTRY_COMPARE(saved.count(), 1);
        QTRY_COMPARE(session->jobId(), saved.at(0).at(0).toString());
        QCOMPARE(session->job()->cameBackFrom, shop.job);
        QCOMPARE(session->job()->machine, machine); // the same machine, not a second one
    }

    void calculationsTakeWhatTheJobKnows() {
        const LiftShop shop;
        shop.say(journal::jobDescribed(shop.job, {.altitude = job::TypedValue{"1500", "m"},
                                                  .riderMass = job::TypedValue{"120", "kg"},
                                                  .luggageMass = job::TypedValue{"60", "kg"}}));
        const auto session = shop.session();
        const auto draft = form(*session, {{QStringLiteral("reading"), QStringLiteral("1000")}});
        const auto line = [](CalcView& view, const char* key) {
            for (const Line& one : view.inputs()->lines())
                if (one.id == QLatin1String(key))
                    return one;
            return Line{};
        };
        CalcView view;
        view.setSession(session.get());
        view.setName(QStringLiteral("compression"));
        view.setDraft(draft.get());
        view.componentComplete();
        QCOMPARE(line(view, "altitude").mark, QStringLiteral("job"));
        QVERIFY(view.results()->lines().at(0).aside.contains(QStringLiteral("1198")));
        draft->set(QStringLiteral("altitude"), QStringLiteral("0")); // one's own word goes first
        QCOMPARE(line(view, "altitude").mark, QStringLiteral("given"));
        QVERIFY(view.results()->lines().at(0).aside.contains(QStringLiteral("1000")));
        const auto tyre = form(*session, {{QStringLiteral("marking"), QStringLiteral("3.00-10 42J")}});
        CalcView marking;
        marking.setSession(session.get());
        marking.setName(QStringLiteral("tyre-marking"));
        marking.setDraft(tyre.get());
        marking.componentComplete();
        QCOMPARE(line(marking, "carried").aside, QStringLiteral("180 kg"));
        QVERIFY(marking.cautions().join(u' ').contains(QStringLiteral("alone")));
    }
};

QTEST_MAIN(TakeInTest)
#include "takein_test.moc"
