// Every page at the lift, loaded in the app's own window at three sizes: no complaint of the QML engine. With
// UNDERCOWL_SHOTS=FOLDER each is saved as a picture, night and day, for looking at.
#include "appwindow.h"

#include "core/journal/rounds.h"
#include "core/journal/saywork.h"

#include "platform/camera/filecamera.h"
#include "qml/shell/draftpages.h"
#include "qml/shell/session.h"

#include <QDir>
#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTest>
#include <QtQml/qqmlextensionplugin.h>

Q_IMPORT_QML_PLUGIN(Undercowl_StylePlugin)
Q_IMPORT_QML_PLUGIN(UndercowlPlugin)

using namespace undercowl;
using namespace undercowl::ui;

namespace {

QStringList complaints;

void listen(QtMsgType type, const QMessageLogContext& /*context*/, const QString& message) {
    // The offscreen platform has no raster of its own for some requests; that is not the QML's fault.
    if (type != QtDebugMsg && type != QtInfoMsg && !message.contains(QStringLiteral("propagateSizeHints")))
        complaints += message;
}

} // namespace

class PagesTest : public QObject {
    Q_OBJECT

private slots:
    void everyPageLoads_data() {
        QTest::addColumn<QString>("page");
        QTest::addColumn<QVariantMap>("properties");
        const QVariantMap gathering{{QStringLiteral("gathering"), QString::fromStdString(shop_.gathering)}};
        QVariantMap place = gathering;
        place[QStringLiteral("half")] = QStringLiteral("loom");
        place[QStringLiteral("place")] = QStringLiteral("1/1");
        const auto row = [](const char* name, const char* page, const QVariantMap& properties) {
            QTest::newRow(name) << QString::fromLatin1(page) << properties;
        };
        row("strip", "StripPage", {});
        row("correct", "StripPage", {{QStringLiteral("step"), QString::fromStdString(shop_.step)}});
        row("hardware", "StripPage", {{QStringLiteral("panel"), QStringLiteral("hardware")}});
        row("bag", "StripPage", {{QStringLiteral("panel"), QStringLiteral("bag")}});
        row("steps", "StepsPage", {});
        row("wiring", "WiringPage", {});
        row("describe", "GatheringPage", {});
        row("map", "GatheringPage", gathering);
        row("stroke", "StrokePage", gathering);
        row("place", "PlacePage", place);
        row("refit", "RefitPage", {});
        row("refit-steps", "RefitStepsPage", {});
        row("readback", "ReadBackPage", gathering);
        row("line-back", "LineBackPage", {});
        row("compare", "ComparePage", gathering);
        row("measure", "MeasurePage", {});
        row("measure-step", "MeasurePage", {{QStringLiteral("about"), QString::fromStdString(shop_.step)}});
        row("measure-setup", "MeasurePage", {{QStringLiteral("panel"), QStringLiteral("setup")}});
        row("instruments", "InstrumentsPage", {});
        row("instrument", "InstrumentPage", {});
        row("readings", "ReadingsPage", {});
        const QString step = QString::fromStdString(shop_.step);
        row("job", "JobPage", {});
        row("look-over", "LookOverPage", {});
        row("refusal", "RefusalPage", {{QStringLiteral("finding"), QString::fromStdString(finding_)}});
        row("settle", "SettlePage", {{QStringLiteral("finding"), QString::fromStdString(finding_)}});
        row("approval", "ApprovalPage", {});
        row("afterwards", "AfterwardsPage", {});
        row("needs", "NeedsPage", {{QStringLiteral("step"), step}});
        row("task", "TaskPage", {{QStringLiteral("task"), QString::fromStdString(shop_.task)}});
        row("hand-over", "HandOverPage", {});
        row("as-found", "AsFoundPage", {});
        row("functions", "FunctionsPage", {});
        row("rounds", "RoundsPage", {});
        row("prove", "ProvePage", {});
        row("second-eyes", "SecondEyesPage", {});
        row("road", "RoadPage", {});
        row("due", "DuePage", {});
        row("cost", "CostPage", {});
        row("signature", "SignaturePage", {});
        row("knowledge", "KnowledgePage", {});
        row("models", "ModelsPage", {});
        row("scan", "ScanPage", {});
        row("sheets", "SheetsPage", {});
        row("backup", "BackupPage", {});
        row("restore", "RestorePage", {});
        row("labels", "LabelsPage", {});
        row("part", "PartPage", {{QStringLiteral("part"), QString::fromStdString(part_)}});
        row("orders", "OrdersPage", {});
        row("fluids", "ConsumablesPage", {});
        row("shop", "MorePage", {});
        row("round", "RoundPage", {{QStringLiteral("round"), QString::fromStdString(round_)}});
        row("round-lists", "RoundListsPage", {});
        row("round-list", "RoundListPage", {{QStringLiteral("list"), QStringLiteral("every")}});
        row("calculations", "CalcListPage", {});
        row("calculation", "CalcPage", {{QStringLiteral("name"), QStringLiteral("bolt-torque")}});
    }

    void everyPageLoads() {
        QFETCH(const QString, page);
        QFETCH(const QVariantMap, properties);
        const auto session = shop_.session();
        platform::FileCamera camera(QStringLiteral(UNDERCOWL_PHOTOS));
        for (const QSize size : {QSize(360, 640), QSize(412, 915), QSize(1280, 800)})
            for (const char* theme : {"night", "day"}) {
                session->set(QStringLiteral("theme"), QString::fromLatin1(theme));
                complaints.clear();
                const auto before = qInstallMessageHandler(listen);
                QQmlApplicationEngine engine;
                engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
                engine.setInitialProperties(
                    {{QStringLiteral("session"), QVariant::fromValue(session.get())},
                     {QStringLiteral("camera"), QVariant::fromValue(static_cast<platform::Camera*>(&camera))},
                     {QStringLiteral("width"), size.width()},
                     {QStringLiteral("height"), size.height()}});
                engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Undercowl/ShopWindow.qml")));
                QVERIFY(!engine.rootObjects().isEmpty());
                auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().first());
                QVERIFY(window != nullptr);
                QVERIFY(QMetaObject::invokeMethod(window, "show", Q_ARG(QString, page),
                                                  Q_ARG(QVariant, QVariant(properties))));
                QTest::qWait(qEnvironmentVariableIsSet("UNDERCOWL_SHOTS") ? 900 : 60);
                const QImage picture = window->grabWindow();
                qInstallMessageHandler(before);
                const QString folder = qEnvironmentVariable("UNDERCOWL_SHOTS");
                if (!folder.isEmpty())
                    picture.save(QDir(folder).filePath(QStringLiteral("%1-%2x%3-%4.png")
                                                           .arg(QLatin1String(QTest::currentDataTag()))
                                                           .arg(size.width())
                                                           .arg(size.height())
                                                           .arg(QLatin1String(theme))));
                QVERIFY2(complaints.isEmpty(), qPrintable(complaints.join(u'\n')));
                QCOMPARE(picture.size(), size);
            }
    }

    void aDraftIsGoneOnWithWhereItWasTyped_data() {
        QTest::addColumn<QString>("page");
        const QString job = QString::fromStdString(shop_.job);
        const QString step = QString::fromStdString(shop_.step);
        const QString gathering = QString::fromStdString(shop_.gathering);
        const auto row = [](const QString& form, const char* page) {
            QTest::newRow(qPrintable(form)) << QString::fromLatin1(page);
        };
        row(QStringLiteral("approval/") + job, "ApprovalPage");
        row(QStringLiteral("calc/bolt-torque"), "CalcPage");
        row(QStringLiteral("cost/") + job, "CostPage");
        row(QStringLiteral("eyes/") + job, "SecondEyesPage");
        row(QStringLiteral("finding/%1/%2").arg(job, QString::fromStdString(finding_)), "FindingPage");
        row(QStringLiteral("finding/%1/%2/stand").arg(job, QString::fromStdString(round_)), "FindingPage");
        row(QStringLiteral("fluid/") + job, "ConsumablesPage");
        row(QStringLiteral("functions/%1/after").arg(job), "FunctionsPage");
        row(QStringLiteral("gathering/%1/%2").arg(job, gathering), "GatheringPage");
        row(QStringLiteral("handover/") + job, "HandOverPage");
        row(QStringLiteral("hold/%1/%2").arg(job, QString::fromStdString(shop_.task)), "TaskPage");
        row(QStringLiteral("instrument/"), "InstrumentPage");
        row(QStringLiteral("left-out/") + job, "AfterwardsPage");
        row(QStringLiteral("memo/") + job, "JobPage");
        row(QStringLiteral("memo/%1/%2").arg(job, step), "MemoPage");
        row(QStringLiteral("needs/%1/%2").arg(job, step), "NeedsPage");
        row(QStringLiteral("part/") + job, "PartsPage");
        row(QStringLiteral("part/%1/%2").arg(job, QString::fromStdString(part_)), "PartPage");
        row(QStringLiteral("proofs/") + job, "ProofsPage");
        row(QStringLiteral("prove/") + job, "ProvePage");
        row(QStringLiteral("reading/%1/%2").arg(job, step), "MeasurePage");
        row(QStringLiteral("recheck/") + job, "RoadPage");
        row(QStringLiteral("refusal/%1/%2").arg(job, QString::fromStdString(finding_)), "RefusalPage");
        row(QStringLiteral("settle/%1/%2").arg(job, QString::fromStdString(finding_)), "SettlePage");
        row(QStringLiteral("signature/") + job, "SignaturePage");
        row(QStringLiteral("strip/%1/%2").arg(job, step), "StripPage");
        row(QStringLiteral("stroke/%1/loom").arg(gathering), "StrokePage");
        row(QStringLiteral("takein/new"), "TakeInPage");
        row(QStringLiteral("takein/") + job, "TakeInPage");
        row(QStringLiteral("of a newer version/") + job, "JobPage");
    }

    // Its page takes what it is opened with: an unknown property is complained of.
    void aDraftIsGoneOnWithWhereItWasTyped() {
        QFETCH(const QString, page);
        const QVariantMap way = draftPage(QString::fromUtf8(QTest::currentDataTag()));
        QCOMPARE(way.value(QStringLiteral("page")).toString(), page);
        const auto session = shop_.session();
        AppWindow app(*session);
        complaints.clear();
        const auto before = qInstallMessageHandler(listen);
        app.show(page.toLatin1().constData(), way.value(QStringLiteral("properties")).toMap());
        qInstallMessageHandler(before);
        QVERIFY2(complaints.isEmpty(), qPrintable(complaints.join(u'\n')));
    }

    void initTestCase() {
        shop_.say(journal::findingNoted(shop_.job, {finding_,
                                                    "front tyre cracked in the grooves",
                                                    job::Severity::Unsafe,
                                                    "new tyre",
                                                    false,
                                                    "",
                                                    {}}));
        shop_.say(journal::taskNamed(shop_.job,
                                     {"b7b0e1de-0000-7000-8000-000000000002", "front wheel", false, "", 0}));
        shop_.say(journal::timeStarted(shop_.job, "b7b0e1de-0000-7000-8000-000000000003", shop_.task));
        shop_.say(journal::stepRefitted(shop_.job, shop_.lastStep));
        job::Approval approval;
        approval.id = "b7b0e1de-0000-7000-8000-000000000004";
        approval.what = "front tyre, brake linings";
        approval.given = true;
        approval.by = "Ilse Quandt";
        approval.how = "called";
        approval.sum = job::TypedValue{"148.50", "EUR"};
        shop_.say(journal::approvalAsked(shop_.job, approval));
        job::Part part;
        part.id = part_;
        part.name = "brake shoes, rear";
        part.supplier = "Harbour parts";
        part.price = job::TypedValue{"18.50", "EUR"};
        shop_.say(journal::partStated(shop_.job, part));
        job::Round round = journal::composed(journal::builtInRounds(), {});
        round.id = round_;
        shop_.say(journal::roundBegun(shop_.job, round));
        shop_.answer();
        auto should = answerOf(colour::Insulation::GN, colour::Insulation::RD);
        should.source = "manual, page 7-12";
        shop_.say(journal::wireAnswered(shop_.job, shop_.gathering, {wiring::Half::Loom, 3, 1},
                                        wiring::Answer::AsItShouldBe, should));
    }

private:
    const Id round_{"b7b0e1de-0000-7000-8000-000000000005"};
    const Id part_{"b7b0e1de-0000-7000-8000-000000000006"};
    const Id finding_{"b7b0e1de-0000-7000-8000-000000000001"};
    LiftShop shop_;
};

QTEST_MAIN(PagesTest)
#include "pages_test.moc"
