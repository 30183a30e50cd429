// Measuring over a real store: verdicts, repeated readings, units, proposals, and the shop's instruments.
// More than 400 lines: the cases share the shop, its wrench and the step whose torque is read.
#include "liftshop.h"

#include "core/handover/record.h"
#include "core/job/leaving.h"
#include "core/job/proving.h"
#include "qml/measure/instrumentsview.h"
#include "qml/measure/measureview.h"

#include <QSignalSpy>
#include <QTest>

#include <algorithm>

using namespace undercowl;
using namespace undercowl::ui;

namespace {

struct Measure {
    explicit Measure(const LiftShop& shop, const QString& about = {}) : session(shop.session()) {
        draft.setProperty("session", QVariant::fromValue(session.get()));
        draft.setProperty("form", QStringLiteral("reading/x"));
        draft.setProperty("title", QStringLiteral("Reading"));
        draft.componentComplete();
        if (!QTest::qWaitFor([this] { return draft.ready(); }))
            qFatal("no draft");
        view.setSession(session.get());
        view.setAbout(about);
        view.setDraft(&draft);
        view.componentComplete();
    }
    void set(const char* name, const QVariant& value) { draft.set(QString::fromLatin1(name), value); }
    void limit(const char* low, const char* high) {
        set("what", QStringLiteral("rear axle nut, torque"));
        set("low", QString::fromLatin1(low));
        set("high", QString::fromLatin1(high));
        set("trust", 0);
    }
    void keep() {
        const QSignalSpy kept(&view, &MeasureView::kept);
        view.keep();
        if (!QTest::qWaitFor([&] { return kept.count() == 1; }))
            qFatal("not kept: %s", qPrintable(view.errors().keys().join(u' ')));
    }
    [[nodiscard]] int named(const char* name) const {
        const QStringList all = view.instruments();
        for (int i = 0; i < all.size(); ++i)
            if (all[i].startsWith(QString::fromLatin1(name)))
                return i;
        return -1;
    }

    std::unique_ptr<ShopSession> session;
    FormDraft draft;
    MeasureView view;
};

// The wrench of the shop, kept through the form as a mechanic would.
void keepWrench(const LiftShop& shop, const char* due) {
    const auto session = shop.session();
    FormDraft draft;
    draft.setProperty("session", QVariant::fromValue(session.get()));
    draft.setProperty("form", QStringLiteral("instrument/"));
    draft.setProperty("title", QStringLiteral("Instrument"));
    draft.componentComplete();
    InstrumentsView view;
    view.setProperty("session", QVariant::fromValue(session.get()));
    view.componentComplete();
    QTRY_VERIFY(view.ready() && draft.ready());
    for (const auto& [name, value] : {std::pair{"name", "wrench red"},
                                      {"high", "110 N.m"},
                                      {"low", "20"},
                                      {"resolution", "0.5"},
                                      {"calibrated", "2020-03-01"},
                                      {"due", due}})
        draft.set(QString::fromLatin1(name), QString::fromLatin1(value));
    view.keep(&draft, {});
    QVERIFY(view.errors().contains(QStringLiteral("kind")));
    draft.set(QStringLiteral("kind"), 0);
    view.keep(&draft, {});
    QVERIFY(view.errors().contains(QStringLiteral("error"))); // an instrument without error is none
    draft.set(QStringLiteral("wrench"), QStringLiteral("II A"));
    const QSignalSpy kept(&view, &InstrumentsView::kept);
    view.keep(&draft, {});
    QTRY_COMPARE(kept.count(), 1);
    QTRY_COMPARE(view.inUse()->count(), 1);
}

} // namespace

class MeasureTest : public QObject {
    Q_OBJECT

private slots:
    void aReadingIsKeptWithoutVerdictWhenTheInstrumentIsNotKnown() {
        const LiftShop shop;
        Measure m(shop);
        m.limit("75", "95");
        m.set("trust", -1);
        m.set("value", QStringLiteral("85"));
        m.view.keep();
        QVERIFY(m.view.errors().contains(QStringLiteral("trust"))); // a limit without a source is none
        m.set("trust", 0);
        QCOMPARE(m.view.verdict(), QString());
        QVERIFY(m.view.reason().contains(QStringLiteral("uncertainty is not known")));
        m.view.chooseInstrument(m.named("torque-wrench-100"));
        QCOMPARE(m.view.verdict(), QStringLiteral("within"));
        QVERIFY(m.view.band()->shown());
        m.view.chooseInstrument(0);
        m.keep();
        const auto job = shop.stored();
        QCOMPARE(job.readings.size(), std::size_t{1});
        QCOMPARE(job.readings[0].verdict, std::string());
        QCOMPARE(job.readings[0].limitSource, std::string("manual"));
        QVERIFY(m.draft.values().isEmpty());
    }

    void theInstrumentLastUsedForAQuantityIsProposed() {
        const LiftShop shop;
        {
            Measure m(shop);
            m.limit("75", "95");
            m.set("value", QStringLiteral("85"));
            m.view.chooseInstrument(m.named("torque-wrench-100"));
            m.keep();
            QCOMPARE(m.view.instrument(), m.named("torque-wrench-100")); // the next reading begins with it
        }
        Measure later(shop);
        QCOMPARE(later.view.instrument(), later.named("torque-wrench-100"));
        later.view.chooseUnit(static_cast<int>(later.view.units().indexOf(QStringLiteral("V"))));
        QCOMPARE(later.view.instrument(), 0); // nothing was measured in volts yet
        later.view.chooseUnit(0);
        QCOMPARE(later.view.instrument(), later.named("torque-wrench-100"));
    }

    void severalReadingsGiveMeanSpreadAndUncertainty() {
        const LiftShop shop;
        Measure m(shop);
        m.limit("75", "95");
        m.view.chooseInstrument(m.named("torque-wrench-100"));
        m.view.again();
        QVERIFY(m.view.errors().contains(QStringLiteral("value"))); // nothing to keep aside
        m.set("value", QStringLiteral("84,5"));
        m.view.again();
        m.set("value", QStringLiteral("85.5"));
        m.view.again();
        m.set("value", QStringLiteral("99"));
        m.view.again();
        m.view.removeAside(2);
        m.set("value", QStringLiteral("86.5"));
        QCOMPARE(m.view.aside()->count(), 2);
        QVERIFY2(m.view.mean().contains(QStringLiteral("mean of 3")), qPrintable(m.view.mean()));
        QVERIFY2(m.view.mean().contains(QStringLiteral("spread 1")), qPrintable(m.view.mean()));
        m.keep();
        const job::Reading reading = shop.stored().readings.at(0);
        QCOMPARE(reading.value.digits, std::string("85.5"));
        QCOMPARE(reading.repeated, (std::vector<std::string>{"84.5", "85.5", "86.5"}));
        QCOMPARE(reading.verdict, std::string("within"));
        QVERIFY(!reading.uncertainty.empty());
        const auto document = handover::ownersRecord(shop.stored(), {}, {}, {});
        const std::string page = handover::html(document, handover::englishWords(), {});
        QVERIFY(page.find("mean of 3 (84.5; 85.5; 86.5)") != std::string::npos);
        QTRY_COMPARE(m.view.readings()->count(), 1);
        QVERIFY(m.view.readings()->lines()[0].detail.contains(QStringLiteral("mean of 84.5, 85.5, 86.5")));
    }

    void theUnitChangesAndTheLimitsKeepTheirs() {
        const LiftShop shop;
        Measure m(shop);
        m.limit("75", "95");
        m.view.chooseInstrument(m.named("torque-wrench-100"));
        m.set("value", QStringLiteral("63")); // 85.4 N.m
        QCOMPARE(m.view.verdict(), QStringLiteral("outside"));
        m.view.toggleUnit();
        QCOMPARE(m.view.unit(), QStringLiteral("lbf.ft"));
        QCOMPARE(m.view.limitUnit(), QStringLiteral("N.m"));
        QCOMPARE(m.view.verdict(), QStringLiteral("within"));
        m.keep();
        const job::Reading reading = shop.stored().readings.at(0);
        QCOMPARE(reading.value.unit, std::string("lbf.ft"));
        QCOMPARE(reading.low->unit, std::string("N.m"));
    }

    void aStepProposesItsFastenersAndWhatWasMeasuredThere() {
        const LiftShop shop;
        const QString step = QString::fromStdString(shop.step);
        {
            Measure m(shop, step);
            QCOMPARE(m.view.aboutText(), QStringLiteral("unplug 6-place connector"));
            m.view.proposeFirst();
            QCOMPARE(m.draft.text(QStringLiteral("what")), QStringLiteral("screw M5, torque"));
            QVERIFY(!m.draft.begun()); // shown, nothing said yet
            m.set("value", QStringLiteral("4.4"));
            m.set("low", QStringLiteral("4"));
            m.set("high", QStringLiteral("5"));
            m.set("trust", 0);
            m.set("reference", QStringLiteral("page 7-12"));
            m.view.chooseInstrument(m.named("torque-wrench-5"));
            m.keep();
        }
        const job::Job job = shop.stored();
        QCOMPARE(job.readings.at(0).about, shop.step);
        // The next time all of it is proposed, and the record says where it was measured.
        Measure again(shop, step);
        again.view.proposeFirst();
        QCOMPARE(again.draft.text(QStringLiteral("high")), QStringLiteral("5"));
        again.set("value", QStringLiteral("4.6"));
        QVERIFY(!again.view.verdict().isEmpty());
        QCOMPARE(again.view.course()->up().size(), 2); // the earlier one and this one
        const auto document = handover::ownersRecord(job, {}, {}, {});
        const std::string page = handover::html(document, handover::englishWords(), {});
        QVERIFY(page.find("screw M5, torque, at: unplug 6-place connector") != std::string::npos);
        QVERIFY(page.find("manual, page 7-12") != std::string::npos);
        QVERIFY(page.find("torque-wrench-5, within") != std::string::npos);
    }

    void limitsThatAreCrossedAreRefusedByName() {
        const LiftShop shop;
        Measure m(shop);
        m.limit("30", "24");
        m.set("value", QStringLiteral("27"));
        m.view.chooseInstrument(m.named("torque-wrench-100"));
        QVERIFY(m.view.verdict().isEmpty());
        m.view.keep();
        for (const char* field : {"low", "high"}) {
            const QString error = m.view.errors().value(QLatin1String(field)).toString();
            QVERIFY2(error.contains(QStringLiteral("At least")) && error.contains(QStringLiteral("At most")),
                     qPrintable(error));
        }
        QVERIFY(shop.stored().readings.empty());
        m.set("high", QStringLiteral("34"));
        m.keep();
    }

    void theUnitFollowsWhatIsMeasured() {
        const LiftShop shop;
        Measure m(shop);
        m.set("what", QStringLiteral("battery, at rest"));
        QCOMPARE(m.view.unit(), QStringLiteral("V"));
        m.set("value", QStringLiteral("12.6"));
        m.keep();
        m.set("what", QStringLiteral("front tyre pressure"));
        QCOMPARE(m.view.unit(), QStringLiteral("bar gauge"));
        m.view.toggleUnit();
        QCOMPARE(m.view.unit(), QStringLiteral("psi gauge"));
        m.set("value", QStringLiteral("28"));
        m.keep();
        m.set("what", QStringLiteral("rear tyre pressure")); // the one last used for it
        QCOMPARE(m.view.unit(), QStringLiteral("psi gauge"));
        m.set("what", QStringLiteral("lean angle")); // nobody can tell: it is asked
        m.set("value", QStringLiteral("40"));
        m.view.keep();
        QVERIFY(m.view.errors().contains(QStringLiteral("unit")));
        QCOMPARE(shop.stored().readings.size(), std::size_t{2});
    }

    void whatNobodyCanDoubtIsOutsideWithoutAnInstrument() {
        const LiftShop shop;
        Measure m(shop);
        m.set("what", QStringLiteral("rear tyre, tread"));
        m.set("low", QStringLiteral("1.6"));
        m.set("trust", 2);
        m.set("value", QStringLiteral("1.2"));
        QCOMPARE(m.view.verdict(), QStringLiteral("outside"));
        QVERIFY2(m.view.reason().contains(QStringLiteral("the instrument is not known")),
                 qPrintable(m.view.reason()));
        m.keep();
        const auto job = shop.stored();
        QCOMPARE(job.readings[0].verdict, std::string("outside"));
        const auto page =
            handover::html(handover::ownersRecord(job, {}, {}, {}), handover::englishWords(), {});
        QVERIFY(page.find("Measured outside its limit: rear tyre, tread") != std::string::npos);
        QVERIFY(page.find("not named, taken to be within") != std::string::npos);
        const auto against = job::againstLeaving(job);
        QVERIFY(std::ranges::any_of(against, [](const job::Against& each) {
            return each.weighs == job::Weighs::Stops &&
                   job::english(each.why).find("measured outside its limit: rear tyre, tread") == 0;
        }));
    }

    void aTorqueOfTheStepIsTheTargetAndJudgesTheReading() {
        const LiftShop shop;
        const QString step = QString::fromStdString(shop.step); // 2 screws M5, 4.5 N.m
        shop.say(journal::stepRefitted(shop.job, shop.step));
        const auto open = [&] {
            for (const job::ToProve& proof : job::toProve(shop.stored()))
                if (proof.kind == job::ProofKind::Torque)
                    return proof.state == job::ToProve::State::Open;
            return false;
        };
        {
            Measure m(shop, step);
            m.view.proposeFirst();
            QCOMPARE(m.view.target(), QStringLiteral("to be 4.5\u00A0N.m"));
            QVERIFY(m.view.targetSource().contains(QStringLiteral("as the step says; 4.23 to 4.77")));
            QVERIFY(m.view.targetSource().contains(QStringLiteral("stands for all 2")));
            m.view.chooseInstrument(m.named("torque-wrench-5"));
            m.set("value", QStringLiteral("4.9"));
            QCOMPARE(m.view.verdict(), QStringLiteral("outside"));
            m.keep();
            QVERIFY(open());
            QCOMPARE(shop.stored().readings[0].high->digits, std::string("4.77"));
        }
        {
            Measure m(shop, step); // asked of the step again, and not as limits that were typed
            m.view.proposeFirst();
            QVERIFY(m.draft.text(QStringLiteral("low")).isEmpty());
            m.view.chooseInstrument(m.named("torque-wrench-5"));
            // The mean of a loose and an overtightened one is right, the bolts are not.
            m.set("value", QStringLiteral("4.0"));
            m.view.again();
            m.set("value", QStringLiteral("5.0"));
            QCOMPARE(m.view.verdict(), QStringLiteral("outside"));
            m.view.removeAside(0);
            m.set("value", QStringLiteral("4.6"));
            QCOMPARE(m.view.verdict(), QStringLiteral("within"));
            m.keep();
            QVERIFY(!open());
        }
        Measure other(shop, QString::fromStdString(shop.lastStep)); // its bolt has no torque
        QCOMPARE(other.view.target(), QString());
        QCOMPARE(other.view.targetSource(), QString());
    }

    void atRestIdleAndRevsMakeOneCurveWithTheLimitsOfTheLast() {
        const LiftShop shop;
        Measure m(shop);
        m.view.chooseUnit(static_cast<int>(m.view.units().indexOf(QStringLiteral("V"))));
        const auto take = [&](const char* what, const char* value) {
            m.set("what", QString::fromLatin1(what));
            m.set("value", QString::fromLatin1(value));
        };
        take("battery at rest", "12.6");
        m.keep();
        QTRY_COMPARE(m.view.proposals()->lines()[0].title,
                     QStringLiteral("battery, at idle")); // next in turn
        m.view.chooseUnit(static_cast<int>(m.view.units().indexOf(QStringLiteral("V"))));
        take("battery, at idle", "13.2");
        QCOMPARE(m.view.course()->up().size(), 2);
        QCOMPARE(m.view.course()->low(), -1.0); // nothing is expected of it yet
        m.keep();
        QTRY_COMPARE(m.view.proposals()->lines()[0].title, QStringLiteral("battery, at revs"));
        m.view.chooseUnit(static_cast<int>(m.view.units().indexOf(QStringLiteral("V"))));
        take("battery, at revs", "14.1");
        m.set("low", QStringLiteral("13.5"));
        m.set("high", QStringLiteral("14.8"));
        m.set("trust", 0);
        auto* course = m.view.course();
        QCOMPARE(course->labels().size(), 3);
        QVERIFY(course->labels()[0].startsWith(QStringLiteral("at rest")));
        QVERIFY(course->up()[0] < course->up()[1] && course->up()[1] < course->low());
        QVERIFY(course->low() < course->up()[2] && course->up()[2] < course->high());
        m.keep();
        m.view.follow(QStringLiteral("battery at rest"));
        QCOMPARE(m.view.course()->up().size(), 3);
        QVERIFY(m.view.course()->low() > 0);
    }

    void theCurveOverDaysHasTheBandOfItsLimits() {
        const LiftShop shop;
        Measure m(shop);
        for (const char* value : {"84", "97"}) {
            m.limit("75", "95");
            m.set("value", QString::fromLatin1(value));
            m.keep();
            QTRY_VERIFY(m.view.readings()->count() > 0);
        }
        QTRY_COMPARE(m.view.readings()->count(), 2);
        m.view.follow(QStringLiteral("rear axle nut, torque"));
        auto* course = m.view.course();
        QCOMPARE(course->up().size(), 2);
        QVERIFY(course->low() < course->up()[0] && course->up()[0] < course->high());
        QVERIFY(course->up()[1] > course->high());
        QVERIFY(course->highText().startsWith(QStringLiteral("95")));
    }

    void theShopsOwnInstrumentJudgesAndIsSaidToBeOverdue() {
        const LiftShop shop;
        keepWrench(shop, "2021-03-01");
        Measure m(shop);
        QTRY_VERIFY(m.named("wrench red") > 0);
        m.limit("75", "95");
        m.set("value", QStringLiteral("85"));
        m.view.chooseInstrument(m.named("wrench red"));
        QCOMPARE(m.view.verdict(), QStringLiteral("within"));
        QVERIFY(m.view.cautions().join(u' ').contains(QStringLiteral("was due on 2021-03-01")));
        m.keep();
        QCOMPARE(shop.stored().readings.at(0).instrument, std::string("wrench red"));

        InstrumentsView view;
        view.setProperty("session", QVariant::fromValue(m.session.get()));
        view.componentComplete();
        QTRY_COMPARE(view.inUse()->count(), 1);
        const Line line = view.inUse()->lines()[0];
        QCOMPARE(line.mark, QStringLiteral("caution"));
        QVERIFY(line.detail.contains(QStringLiteral("overdue since 1 Mar 2021")));
        QCOMPARE(view.known(line.id)[QStringLiteral("wrench")].toString(), QStringLiteral("II A"));
        view.retire(line.id, true);
        QTRY_COMPARE(view.retired()->count(), 1);
        QTRY_COMPARE(m.named("wrench red"), -1); // offered no more
        view.retire(line.id, false);
        QTRY_COMPARE(view.inUse()->count(), 1);
    }
};

QTEST_GUILESS_MAIN(MeasureTest)
#include "measure_test.moc"
