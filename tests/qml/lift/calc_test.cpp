// Calculations as forms: every declaration, over a real store.
#include "liftshop.h"

#include "qml/calc/calclist.h"
#include "qml/calc/calcview.h"

#include <QTest>

using namespace undercowl;
using namespace undercowl::ui;

namespace {

struct Form {
    Form(const LiftShop& shop, const QString& name) : session(shop.session()) {
        draft.setProperty("session", QVariant::fromValue(session.get()));
        draft.setProperty("form", QString(QStringLiteral("calc/") + name));
        draft.componentComplete();
        view.setSession(session.get());
        view.setName(name);
        view.setDraft(&draft);
        view.componentComplete();
    }
    void enter(const char* key, const char* typed) {
        view.open(QString::fromLatin1(key));
        view.setValue(QString::fromLatin1(typed));
    }

    std::unique_ptr<ShopSession> session;
    FormDraft draft;
    CalcView view;
};

} // namespace

class CalcTest : public QObject {
    Q_OBJECT

private slots:
    void everyCalculationIsAFormWhoseExampleWorks() {
        const LiftShop shop;
        CalcList list;
        QCOMPARE(list.lines()->count(), static_cast<int>(trade::calculations().size()));
        for (const Line& line : list.lines()->lines()) {
            Form form(shop, line.id);
            QTRY_VERIFY(form.draft.ready());
            QVERIFY(form.view.inputs()->count() > 0);
            QVERIFY2(!form.view.problem().isEmpty(), qPrintable(line.id)); // nothing was entered yet
            form.view.showExample();
            QVERIFY2(form.view.problem().isEmpty(), qPrintable(line.id + u' ' + form.view.problem()));
            QVERIFY2(form.view.results()->count() > 0, qPrintable(line.id));
            QVERIFY2(!form.view.working().isEmpty(), qPrintable(line.id));
            QVERIFY2(!form.view.sources().isEmpty(), qPrintable(line.id));
            form.draft.discard();
        }
        list.setWords(QStringLiteral("tyre press"));
        QVERIFY(list.lines()->count() >= 1 && list.lines()->count() < 6);
    }

    void whatIsMissingOrWrongIsNamedAndUnitsCanBeChosen() {
        const LiftShop shop;
        Form form(shop, QStringLiteral("premix"));
        QTRY_VERIFY(form.draft.ready());
        QVERIFY(form.view.problem().contains(QStringLiteral("Fuel")));
        form.enter("fuel", "5,0"); // the keypad's comma is the decimal mark
        QCOMPARE(form.view.unit(), QStringLiteral("L"));
        form.view.next();
        QCOMPARE(form.view.key(), QStringLiteral("ratio"));
        form.view.setValue(QStringLiteral("0"));
        QVERIFY(!form.view.fault().isEmpty() || !form.view.problem().isEmpty());
        QCOMPARE(form.view.results()->count(), 0);
        form.view.setValue(QStringLiteral("50"));
        QCOMPARE(form.view.results()->lines()[0].aside, QStringLiteral("100 mL"));
        form.view.open(QStringLiteral("fuel"));
        form.view.setUnit(static_cast<int>(form.view.units().indexOf(QStringLiteral("mL"))));
        QCOMPARE(form.view.unit(), QStringLiteral("mL"));
        QVERIFY(form.view.results()->count() == 0); // 5 mL of fuel is below the range
        QVERIFY(form.view.fault().contains(QStringLiteral("possible")));
    }

    void aJudgedMeasurementBecomesAReadingOfTheJob() {
        const LiftShop shop;
        Form form(shop, QStringLiteral("tread"));
        QTRY_VERIFY(form.draft.ready());
        form.enter("depth", "1.65");
        form.enter("country", "DE");
        QCOMPARE(form.view.verdict(), QStringLiteral("undecided"));
        QVERIFY(form.view.band()->shown());
        QVERIFY(form.view.band()->low() > 0);
        QVERIFY(form.view.band()->value() > form.view.band()->low());
        QVERIFY(form.view.band()->value() < form.view.band()->acceptFrom());
        form.view.keep();
        QTRY_COMPARE(shop.stored().readings.size(), std::size_t{1});
        const job::Reading reading = shop.stored().readings[0];
        QCOMPARE(reading.verdict, std::string("too close to call"));
        QCOMPARE(reading.value.unit, std::string("mm"));
        QVERIFY(reading.limitSource.find("StVZO") != std::string::npos);
    }

    void pointsAreDrawnAsACurveWithTheBandThatIsExpected() {
        const LiftShop shop;
        Form form(shop, QStringLiteral("charging-check"));
        QTRY_VERIFY(form.draft.ready());
        form.view.showExample();
        QCOMPARE(form.view.curve()->up().size(), 3);
        QVERIFY(form.view.curve()->up()[2] > form.view.curve()->low());
        QVERIFY(form.view.curve()->up()[2] < form.view.curve()->high());
        QVERIFY(form.view.curve()->up()[0] < form.view.curve()->low());
        form.view.keep();
        QTRY_COMPARE(shop.stored().readings.size(), std::size_t{3});
        const auto readings = shop.stored().readings;
        QCOMPARE(readings[0].what, std::string("battery, at rest"));
        QCOMPARE(readings[0].value.digits, std::string("12.5"));
        QVERIFY(readings[0].verdict.empty() && !readings[0].uncertainty.empty());
        QCOMPARE(readings[2].what, std::string("battery, at revs"));
        QCOMPARE(readings[2].verdict, std::string("within"));
    }
};

QTEST_GUILESS_MAIN(CalcTest)
#include "calc_test.moc"
