// What the shop knows, offered to a job; codes read from pictures by the camera that takes them from files.
#include "forms.h"

#include "core/handover/labels.h"
#include "core/journal/say.h"
#include "platform/camera/filecamera.h"
#include "platform/labels.h"
#include "platform/threads/across.h"
#include "qml/find/finder.h"
#include "qml/knowledge/knowledgeview.h"
#include "qml/knowledge/modelsview.h"
#include "qml/scan/labelsview.h"
#include "qml/scan/scanview.h"

#include <QFile>
#include <QProcess>
#include <QSignalSpy>
#include <QTest>

#include <fstream>

using namespace undercowl;
using namespace undercowl::ui;

namespace {

// A second machine of the same model, with a torque and a wrong part; its owner must never be told.
void addOtherJob(const LiftShop& shop) {
    shop.say(journal::machineDescribed({"m2", "marrowin", "Tern 125", 1989, "MT125-9", ""}));
    shop.say(journal::ownerDescribed({"o2", "Rik Ammer", "", "", ""}));
    shop.say(journal::jobOpened("j2", {.number = "2025-001", .machine = "m2", .owner = "o2"}));
    job::StripStep step;
    step.id = "s2";
    step.title = "rear wheel";
    step.hardware = {{1, "axle nut", "M12", "", job::TypedValue{"49", "N.m"}}};
    shop.say(journal::stepStripped("j2", step));
    job::Part part;
    part.id = "p2";
    part.name = "brake shoes";
    part.number = "QX-44 10";
    part.fitted = job::PartFit::DoesNotFit;
    part.fit = "pivot";
    shop.say(journal::partStated("j2", part));
    step.id = "s3";
    step.title = "ask Rik Ammer";
    step.asFound = "his own setting";
    shop.say(journal::stepStripped("j2", step));
}

const Line* lineWith(const LineModel& model, const QString& title) {
    for (const Line& line : model.lines())
        if (line.title.startsWith(title))
            return &line;
    return nullptr;
}

std::unique_ptr<KnowledgeView> knowledge(ShopSession& session) {
    auto view = std::make_unique<KnowledgeView>();
    view->setProperty("session", QVariant::fromValue(&session));
    view->componentComplete();
    return view;
}

// A label as it is printed, as a camera sees it.
QString pictureOfLabel(const LiftShop& shop, const std::string& bag) {
    const auto sheet = platform::labelSheet({{bag,
                                              "Marrowin Tern 125",
                                              "2026-001",
                                              {"unplug"},
                                              {"2 x screw"},
                                              false,
                                              handover::written({shop.job, bag})}},
                                            platform::LabelStock::A4);
    if (!sheet)
        return {};
    const QString pdf = shop.dir.filePath(QStringLiteral("label.pdf"));
    std::ofstream(pdf.toStdString(), std::ios::binary)
        .write(reinterpret_cast<const char*>(sheet->data()), static_cast<std::streamsize>(sheet->size()));
    const QString folder = shop.dir.filePath(QStringLiteral("seen"));
    QDir().mkpath(folder);
    QProcess::execute(QStringLiteral("pdftoppm"),
                      {QStringLiteral("-r"), QStringLiteral("200"), QStringLiteral("-jpeg"),
                       QStringLiteral("-singlefile"), QStringLiteral("-x"), QStringLiteral("0"),
                       QStringLiteral("-y"), QStringLiteral("0"), QStringLiteral("-W"), QStringLiteral("600"),
                       QStringLiteral("-H"), QStringLiteral("400"), pdf, folder + QStringLiteral("/label")});
    return folder;
}

} // namespace

class KnowledgeTest : public QObject {
    Q_OBJECT

private slots:
    void anotherJobOfTheModelIsOfferedAndTakenOverByATouch() {
        const LiftShop shop;
        addOtherJob(shop);
        const auto session = shop.session();
        const auto view = knowledge(*session);
        QTRY_VERIFY(view->ready());
        QVERIFY(view->offered());
        const Line* torque = lineWith(*view->facts(), QStringLiteral("rear wheel"));
        QVERIFY(torque != nullptr);
        QCOMPARE(torque->detail, QStringLiteral("49 N.m"));
        QVERIFY(lineWith(*view->facts(), QStringLiteral("unplug")) ==
                nullptr);                                                    // its own is not offered to it
        QVERIFY(lineWith(*view->facts(), QStringLiteral("ask")) == nullptr); // names the owner
        QVERIFY(shop.stored().memos.empty());
        view->takeOver(torque->id);
        QTRY_COMPARE(shop.stored().memos.size(), std::size_t{1});
        view->takeOver(lineWith(*view->facts(), QStringLiteral("brake shoes"))->id);
        QTRY_COMPARE(session->job()->parts.size(), std::size_t{1});
        session->undoLast();
        QTRY_VERIFY(shop.stored().parts.empty());
    }

    void whatOneShopKnowsAnotherLearns() {
        const LiftShop shop;
        addOtherJob(shop);
        const auto session = shop.session();
        const auto view = knowledge(*session);
        QTRY_VERIFY(view->ready());
        view->write();
        QFile file(view->file());
        QVERIFY(file.open(QIODevice::ReadOnly));
        QVERIFY(!file.readAll().contains("Ammer"));
        const LiftShop other;
        const auto there = other.session();
        ModelsView models;
        models.setProperty("session", QVariant::fromValue(there.get()));
        models.componentComplete();
        QTRY_COMPARE(models.models()->count(), 1);
        models.learn(QStringLiteral(UNDERCOWL_PHOTOS "/shop.json"));
        QVERIFY(!models.error().isEmpty());
        models.learn(view->file());
        QTRY_VERIFY(!models.learned().isEmpty());
        const auto learned = knowledge(*there);
        QTRY_VERIFY(lineWith(*learned->facts(), QStringLiteral("rear wheel")) != nullptr);
        QVERIFY(models.error().isEmpty());
    }

    void aBagBeforeTheCameraOpensItsStep() {
#ifdef UNDERCOWL_THREADS_WATCHED
        QSKIP("Clang 14's thread sanitizer fails itself where Qt starts a process");
#endif
        const LiftShop shop;
        const QString folder = pictureOfLabel(shop, "7");
        QVERIFY(!folder.isEmpty());
        const auto session = shop.session();
        platform::FileCamera camera(folder);
        ScanView view;
        view.setProperty("session", QVariant::fromValue(session.get()));
        view.setCamera(&camera);
        const QSignalSpy found(&view, &ScanView::bagFound);
        view.setActive(true);
        view.componentComplete();
        QTRY_COMPARE_WITH_TIMEOUT(found.count(), 1, 20000);
        QCOMPARE(found.at(0).at(1).toString(), QString::fromStdString(shop.step));
        QVERIFY(view.answer().contains(QStringLiteral("Bag 7")));
    }

    void whatIsFoundIsFilteredByKindMachineAndState() {
        const LiftShop shop;
        addOtherJob(shop);
        shop.say(journal::jobHandedOver("j2", ""));
        const auto session = shop.session();
        Finder finder;
        finder.setProperty("session", QVariant::fromValue(session.get()));
        finder.setWords(QStringLiteral("brake"));
        QTRY_VERIFY(finder.searched());
        const int all = finder.hits()->count();
        QVERIFY(all >= 2); // the lever of the one, the shoes of the other
        QCOMPARE(finder.machines().size(), 2);
        finder.setState(4);
        QVERIFY(finder.filtered());
        QCOMPARE(finder.jobOf(0), QStringLiteral("j2"));
        QVERIFY(finder.hits()->count() < all);
        finder.setState(0);
        finder.setKind(static_cast<int>(store::HitKind::Step) + 1);
        for (const Line& line : finder.hits()->lines())
            QCOMPARE(line.aside, finder.kinds()[finder.kind()]);
        QCOMPARE(finder.pageOf(0).value(QStringLiteral("page")).toString(), QStringLiteral("StripPage"));
        QVERIFY(!finder.pageOf(0)
                     .value(QStringLiteral("properties"))
                     .toMap()
                     .value(QStringLiteral("step"))
                     .toString()
                     .isEmpty());
        finder.setMachine(QStringLiteral("nobody's"));
        QCOMPARE(finder.hits()->count(), 0);
        finder.setMachine({});
        finder.setKind(0);
        finder.setAge(30);
        QCOMPARE(finder.hits()->count(), all);
    }

    void labelsAreMadeForTheBagsThatAreChosen() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto view = on<LabelsView>(*session);
        QCOMPARE(view->chosen(), 2);
        view->choose(QStringLiteral("8"));
        QCOMPARE(view->chosen(), 1);
        view->write(0, QStringLiteral("0"));
        QVERIFY(view->errors().contains(QStringLiteral("first")));
        view->write(0, QStringLiteral("25")); // a sheet has 24
        QTRY_VERIFY_WITH_TIMEOUT(session->problem().contains(QStringLiteral("24")), 20000);
        view->write(0, QString());
        QTRY_VERIFY_WITH_TIMEOUT(!view->file().isEmpty(), 20000);
        QFile file(view->file());
        QVERIFY(file.open(QIODevice::ReadOnly) && file.read(5) == "%PDF-");
    }

    void aNumberFindsThePartThatWaits() {
        const LiftShop shop;
        addOtherJob(shop);
        const auto session = shop.session();
        ScanView view;
        view.setProperty("session", QVariant::fromValue(session.get()));
        view.look(QStringLiteral("QX4410"));
        QTRY_COMPARE(view.parts()->count(), 1);
        const QSignalSpy found(&view, &ScanView::partFound);
        view.openPart(view.parts()->lines()[0].id);
        QCOMPARE(found.count(), 1);
        QTRY_COMPARE(session->jobId(), QStringLiteral("j2"));
        view.look(QStringLiteral("nothing"));
        QTRY_VERIFY(view.answer().contains(QStringLiteral("No open job")));
        view.look(QStringLiteral("undercowl:bag/nowhere/7"));
        QTRY_VERIFY(view.answer().contains(QStringLiteral("not in this shop")));
        view.readFile(QStringLiteral(UNDERCOWL_PHOTOS "/switch-before.jpg"));
        QTRY_VERIFY_WITH_TIMEOUT(view.answer().contains(QStringLiteral("No code")), 20000);
    }
};

QTEST_MAIN(KnowledgeTest)
#include "knowledge_test.moc"
