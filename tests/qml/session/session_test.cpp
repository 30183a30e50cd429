// The session over the real store: what is shown as saved is saved, nothing entered is lost, the touch thread
// never waits.
#include "heldstore.h"

#include "core/journal/say.h"
#include "platform/threads/across.h"
#include "qml/shell/formdraft.h"
#include "qml/shell/session.h"

#include <QElapsedTimer>
#include <QProcess>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <csignal>

using namespace undercowl;
using namespace undercowl::ui;

namespace {

std::filesystem::path shopIn(const QTemporaryDir& dir) {
    return dir.filePath(QStringLiteral("shop")).toStdString();
}

// A shop with one mechanic, one machine and one job.
struct Shop {
    explicit Shop(const std::filesystem::path& folder) {
        auto store = store::Store::open(folder);
        if (!store)
            qFatal("%s", store.error().message.c_str());
        const auto say = [&](const journal::Draft& draft) {
            if (const auto said = store->append(draft); !said)
                qFatal("%s", said.error().message.c_str());
        };
        const job::Mechanic mechanic{store->newId(), "Ada"};
        say(journal::mechanicNamed(mechanic));
        if (!store->chooseMechanic(mechanic.id))
            qFatal("no mechanic");
        const job::Machine machine{store->newId(), "Marrowin", "Tern 125", 1987, "MT125-004711", {}};
        say(journal::machineDescribed(machine));
        job = store->newId();
        say(journal::jobOpened(job, {.number = "2026-001", .machine = machine.id}));
        other = store->newId();
        say(journal::jobOpened(other, {.number = "2026-002", .machine = machine.id}));
    }
    Id job;
    Id other;
};

job::Finding finding(const ShopSession& session, const char* text) {
    job::Finding finding;
    finding.id = session.newId();
    finding.text = text;
    return finding;
}

std::optional<std::string> draftInStore(const std::filesystem::path& folder, std::string_view form) {
    const auto store = store::Store::open(folder);
    return store ? store->draft(form) : std::nullopt;
}

// The end of a program that types and is killed: everything after the last change is left undone.
[[noreturn]] void typeAndDie(const std::filesystem::path& folder, const QString& words) {
    ShopSession session(shopInFolder(folder), folder);
    session.keepDraft({QStringLiteral("finding/x"), QStringLiteral("Finding"), {}, session.now()},
                      words.toUtf8());
    QTest::qWait(350); // longer than a draft may stay unwritten, without a flush
    raise(SIGKILL);
    std::abort();
}

} // namespace

class SessionTest : public QObject {
    Q_OBJECT

private slots:
    void savedOnlyAfterTheAppendReturned() {
        open();
        gate_->hold();
        session_->say({journal::findingNoted(shop_->job, finding(*session_, "cracked lens"))});
        // Meanwhile the touch thread goes on: a timer of 10 ms is never late by more than a few frames.
        QElapsedTimer longest;
        qint64 worst = 0;
        for (int i = 0; i < 20; ++i) {
            longest.start();
            QTest::qWait(10);
            worst = std::max(worst, longest.elapsed());
        }
        QVERIFY2(worst < 150, qPrintable(QStringLiteral("the touch thread waited %1 ms").arg(worst)));
        QCOMPARE(session_->saving(), ShopSession::Saving::Underway);
        QCOMPARE(session_->savedCount(), 0);
        QVERIFY(session_->job()->findings.empty());

        // The moment Saved is announced, another store on the same folder reads the finding.
        bool there = false;
        connect(session_.get(), &ShopSession::savingChanged, this, [&] {
            if (session_->saving() != ShopSession::Saving::Saved)
                return;
            const auto store = store::Store::open(folder_);
            there = store && store->job(shop_->job)->findings.size() == 1;
        });
        gate_->release();
        QTRY_COMPARE(session_->saving(), ShopSession::Saving::Saved);
        QVERIFY(there);
        QCOMPARE(session_->savedCount(), 1);
        QCOMPARE(session_->job()->findings.size(), std::size_t{1});
    }

    void aRefusedAppendKeepsTheDraftAndSaysWhatToDo() {
        open();
        session_->keepDraft(
            {QStringLiteral("finding/1"), QStringLiteral("Finding"), shop_->job, session_->now()},
            "{\"words\":\"typed\"}");
        gate_->refuse(store::Problem{store::Fault::DiskFull, "no space left"});
        bool answered = false;
        session_->say({journal::findingNoted(shop_->job, finding(*session_, "cracked lens"))},
                      {.undoText = QStringLiteral("Kept"), .form = QStringLiteral("finding/1")},
                      [&](const Entries& said) { answered = !said; });
        QTRY_COMPARE(session_->saving(), ShopSession::Saving::Failed);
        QVERIFY(answered);
        QVERIFY2(session_->problem().contains(QStringLiteral("Make room")), qPrintable(session_->problem()));
        QVERIFY(session_->undoText().isEmpty());
        QCOMPARE(session_->savedCount(), 0);
        QTRY_COMPARE(draftInStore(folder_, "finding/1").value_or(""), std::string("{\"words\":\"typed\"}"));

        gate_->refuse(std::nullopt);
        session_->say({journal::findingNoted(shop_->job, finding(*session_, "cracked lens"))},
                      {.undoText = {}, .form = QStringLiteral("finding/1")});
        QTRY_COMPARE(session_->saving(), ShopSession::Saving::Saved);
        QVERIFY(session_->problem().isEmpty());
        QVERIFY(session_->waitingDrafts().empty());
        QTRY_VERIFY(!draftInStore(folder_, "finding/1"));
    }

    void aStoreThatRefusesToWriteSaysSo() {
        open();
        gate_->refuse(
            store::Problem{store::Fault::InputOutput, "read-only file system: " + folder_.string()});
        session_->say({journal::findingNoted(shop_->job, finding(*session_, "cracked lens"))});
        QTRY_COMPARE(session_->saving(), ShopSession::Saving::Failed);
        QVERIFY(session_->problem().contains(QStringLiteral("read-only file system")));
        QVERIFY(session_->job()->findings.empty());
    }

    void aDraftSurvivesAKill() {
#ifdef UNDERCOWL_THREADS_WATCHED
        QSKIP("Clang 14's thread sanitizer fails itself where Qt starts a process");
#endif
        QProcess victim;
        victim.start(QCoreApplication::applicationFilePath(),
                     {QStringLiteral("--type-and-die"), QString::fromStdString(folder_.string()),
                      QStringLiteral("{\"words\":\"half a sent\"}")});
        QVERIFY(victim.waitForFinished(20000));
        QCOMPARE(victim.exitStatus(), QProcess::CrashExit);
        open();
        QCOMPARE(session_->waitingDrafts().size(), std::size_t{1});
        QCOMPARE(session_->waitingDrafts().front().title, QStringLiteral("Finding"));
        QCOMPARE(draftInStore(folder_, "finding/x").value_or(""), std::string("{\"words\":\"half a sent\"}"));
    }

    void aFormOpenedBeforeItsJobIsReadShowsWhatWasEnteredOnceItIs() {
        open();
        const auto makeForm = [this](const char* name, const char* job) {
            auto form = std::make_unique<FormDraft>();
            form->setProperty("session", QVariant::fromValue(session_.get()));
            form->setProperty("form", QString::fromLatin1(name));
            form->setProperty("jobId", QString::fromLatin1(job));
            form->setProperty("title", QStringLiteral("Memo"));
            form->componentComplete();
            return form;
        };
        {
            const auto form = makeForm("memo/7", "7");
            QTRY_VERIFY(form->ready());
            form->set(QStringLiteral("text"), QStringLiteral("shim under the left clip"));
        }
        const auto form = makeForm("memo/", "");
        QTRY_VERIFY(form->ready());
        QVERIFY(!form->begun());
        form->setProperty("jobId", QStringLiteral("7"));
        form->setProperty("form", QStringLiteral("memo/7"));
        QTRY_COMPARE(form->text(QStringLiteral("text")), QStringLiteral("shim under the left clip"));
    }

    void aFormShowsWhatWasEnteredBeforeAndDiscardingIsUndone() {
        open();
        const auto makeForm = [this] {
            auto form = std::make_unique<FormDraft>();
            form->setProperty("session", QVariant::fromValue(session_.get()));
            form->setProperty("form", QStringLiteral("finding/2"));
            form->setProperty("title", QStringLiteral("Finding"));
            form->componentComplete();
            return form;
        };
        {
            const auto form = makeForm();
            QTRY_VERIFY(form->ready());
            form->set(QStringLiteral("text"), QStringLiteral("fork leaks, \"left\""));
        } // left at once, without a pause
        const auto form = makeForm();
        QTRY_VERIFY(form->ready());
        QCOMPARE(form->text(QStringLiteral("text")), QStringLiteral("fork leaks, \"left\""));
        QVERIFY(!form->restoredFrom().isEmpty());
        form->discard();
        QVERIFY(session_->waitingDrafts().empty());
        QTRY_VERIFY(!draftInStore(folder_, "finding/2"));
        QVERIFY(form->canBringBack());
        form->bringBack();
        QCOMPARE(form->text(QStringLiteral("text")), QStringLiteral("fork leaks, \"left\""));
        QTRY_VERIFY(draftInStore(folder_, "finding/2"));
    }

    void undoWithdrawsAndUndoOfUndoBringsBack() {
        open();
        session_->say({journal::findingNoted(shop_->job, finding(*session_, "cracked lens")),
                       journal::findingNoted(shop_->job, finding(*session_, "seized rear brake"))},
                      {.undoText = QStringLiteral("Findings kept"), .form = {}});
        QTRY_COMPARE(session_->undoText(), QStringLiteral("Findings kept"));
        QCOMPARE(session_->job()->findings.size(), std::size_t{2});
        session_->undoLast();
        QTRY_COMPARE(session_->undoText(), QStringLiteral("Undone: Findings kept"));
        QVERIFY(session_->job()->findings.empty());
        session_->undoLast();
        QTRY_COMPARE(session_->undoText(), QStringLiteral("Brought back"));
        QCOMPARE(session_->job()->findings.size(), std::size_t{2});
        QCOMPARE(session_->job()->findings.front().text, std::string("cracked lens"));
    }

    void whatWasSaidIsTakenBackStepByStep() {
        open();
        for (const char* words : {"first", "second", "third"}) {
            session_->say({journal::findingNoted(shop_->job, finding(*session_, words))},
                          {.undoText = QString::fromLatin1(words), .form = {}});
            QTRY_COMPARE(session_->undoText(), QString::fromLatin1(words));
        }
        QCOMPARE(session_->takeBackText(), QStringLiteral("third"));
        session_->takeBack();
        QTRY_COMPARE(session_->undoText(), QStringLiteral("Undone: third"));
        session_->takeBack(); // not what was just taken back
        QTRY_COMPARE(session_->undoText(), QStringLiteral("Undone: second"));
        QCOMPARE(session_->job()->findings.size(), std::size_t{1});
        QCOMPARE(session_->takeBackText(), QStringLiteral("first"));
        session_->undoLast(); // what happened last
        QTRY_COMPARE(session_->undoText(), QStringLiteral("Brought back"));
        QCOMPARE(session_->job()->findings.size(), std::size_t{2});
        QCOMPARE(session_->takeBackText(), QStringLiteral("second"));
        session_->takeBack();
        QTRY_COMPARE(session_->job()->findings.size(), std::size_t{1});
        session_->takeBack();
        QTRY_VERIFY(session_->job()->findings.empty());
        QVERIFY(session_->takeBackText().isEmpty());
        session_->takeBack(); // nothing more
        QTest::qWait(50);
        QCOMPARE(session_->undoText(), QStringLiteral("Undone: first"));
    }

    void inAnotherJobNothingOfTheOneBeforeIsTakenBack() {
        open();
        session_->say({journal::findingNoted(shop_->job, finding(*session_, "cracked lens"))},
                      {.undoText = QStringLiteral("Finding kept"), .form = {}});
        QTRY_COMPARE(session_->takeBackText(), QStringLiteral("Finding kept"));
        session_->openJob(QString::fromStdString(shop_->other));
        QTRY_VERIFY(!session_->opening());
        QVERIFY(session_->takeBackText().isEmpty());
        session_->undoLast(); // the line that still offers it
        QTRY_COMPARE(session_->undoText(), QStringLiteral("Undone: Finding kept"));
        session_->openJob(QString::fromStdString(shop_->job));
        QTRY_VERIFY(!session_->opening());
        QVERIFY(session_->job()->findings.empty());
    }

    void theJobAskedForLastIsTheOneThatOpens() {
        open();
        session_->openJob(QString::fromStdString(shop_->other));
        session_->openJob(QString::fromStdString(shop_->job));
        session_->openJob(QString::fromStdString(shop_->other));
        QSignalSpy changes(session_.get(), &ShopSession::jobChanged);
        QTRY_VERIFY(!session_->opening());
        QTest::qWait(50);
        QCOMPARE(session_->jobId(), QString::fromStdString(shop_->other));
        QCOMPARE(changes.count(), 1); // the late answers did not flash past
    }

    void theFirstMechanicIsNamedBeforeAnythingElse() {
        const auto empty = folder_.parent_path() / "empty";
        ShopSession session(shopInFolder(empty), empty);
        QTRY_COMPARE(session.state(), ShopSession::State::NoMechanic);
        session.nameMechanic(QStringLiteral("  "));
        QVERIFY(!session.problem().isEmpty());
        QCOMPARE(session.state(), ShopSession::State::NoMechanic);
        session.nameMechanic(QStringLiteral(" Ada "));
        QTRY_COMPARE(session.state(), ShopSession::State::Ready);
        QCOMPARE(session.mechanicName(), QStringLiteral("Ada"));
        QCOMPARE(store::Store::open(empty)->mechanic(), session.mechanic());
    }

    void aStoreThatCannotBeOpenedIsToldAndTriedAgain() {
        const auto blocked = folder_.parent_path() / "blocked";
        QFile file(QString::fromStdString(blocked.string()));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.close();
        ShopSession session(shopInFolder(blocked), blocked);
        QTRY_COMPARE(session.state(), ShopSession::State::Failed);
        QVERIFY(session.problem().contains(QStringLiteral("cannot be opened")));
        QVERIFY(file.remove());
        session.tryAgain();
        QTRY_COMPARE(session.state(), ShopSession::State::NoMechanic);
        QVERIFY(session.problem().isEmpty());
    }

    void aShopOnAFullDiskIsLookedAtUntilThereIsRoom() {
        class Looking : public HeldStore {
        public:
            using HeldStore::HeldStore;
            [[nodiscard]] std::string readOnly() const override { return "The disk is full."; }
        };
        // No disk has room for what lies in a folder that is not there.
        const auto elsewhere = folder_.parent_path() / "elsewhere";
        auto looks = std::make_shared<int>(0);
        ShopSession session(
            [folder = folder_, looks]() -> Result<std::unique_ptr<ShopStore>> {
                auto opened = shopInFolder(folder)();
                if (!opened || ++*looks > 1)
                    return opened;
                return std::make_unique<Looking>(std::move(*opened), std::make_shared<Gate>());
            },
            elsewhere);
        QTRY_COMPARE(session.state(), ShopSession::State::Ready);
        QVERIFY(session.readOnly());
        QVERIFY(session.diskFull());
        QCOMPARE(session.problem(), QStringLiteral("The disk is full."));
        std::filesystem::create_directory(elsewhere);
        QTRY_VERIFY_WITH_TIMEOUT(!session.readOnly(), 10'000);
        QCOMPARE(session.state(), ShopSession::State::Ready);
        QVERIFY(!session.diskFull());
        QVERIFY(session.problem().isEmpty());
    }

    void aNameThatIsNoMediaNameShowsNothing() {
        open();
        const QString good = QString(64, u'a') + QStringLiteral(".jpg");
        QVERIFY(session_->mediaUrl(good).isLocalFile());
        for (const auto& bad : {QStringLiteral("../shop.db"), QString(64, u'a'), good + QStringLiteral("/.."),
                                QStringLiteral("/etc/passwd"), QString()})
            QVERIFY2(session_->mediaUrl(bad).isEmpty(), qPrintable(bad));
    }

    void init() {
        dir_ = std::make_unique<QTemporaryDir>();
        folder_ = shopIn(*dir_);
        shop_ = std::make_unique<Shop>(folder_);
        gate_ = std::make_shared<Gate>();
    }
    void cleanup() {
        gate_->release();
        session_.reset();
        dir_.reset();
    }

public:
    static int child(const QStringList& arguments) {
        typeAndDie(arguments.at(2).toStdString(), arguments.at(3));
    }

private:
    // The session with the job open.
    void open() {
        session_ = std::make_unique<ShopSession>(heldShop(folder_, gate_), folder_);
        QTRY_COMPARE(session_->state(), ShopSession::State::Ready);
        session_->openJob(QString::fromStdString(shop_->job));
        QTRY_VERIFY(session_->snapshot() != nullptr);
    }

    std::unique_ptr<QTemporaryDir> dir_;
    std::filesystem::path folder_;
    std::unique_ptr<Shop> shop_;
    std::shared_ptr<Gate> gate_;
    std::unique_ptr<ShopSession> session_;
};

int main(int argc, char* argv[]) {
    QCoreApplication app(argc, argv);
    const auto arguments = QCoreApplication::arguments();
    if (arguments.value(1) == QStringLiteral("--type-and-die"))
        return SessionTest::child(arguments);
    SessionTest test;
    return QTest::qExec(&test, argc, argv);
}

#include "session_test.moc"
