// What the shell does when the disk is full, the shop is damaged, or it is to be backed up.
#include "core/journal/say.h"
#include "heldstore.h"
#include "platform/camera/camera.h"
#include "qml/backup/backupview.h"
#include "qml/backup/rollingcopy.h"
#include "qml/shell/photocapture.h"
#include "qml/shell/session.h"

#include <QDir>
#include <QFile>
#include <QImage>
#include <QTemporaryDir>
#include <QTest>

#include <fstream>

using namespace undercowl;
using namespace undercowl::ui;

namespace {

// Ready at once, and takes the same picture each time.
class ReadyCamera : public platform::Camera {
public:
    void start() override { setState(State::Ready); }
    void stop() override { setState(State::Off); }
    void capture(const QString& file) override {
        QImage image(40, 30, QImage::Format_RGB32);
        image.fill(0xff336699U + static_cast<unsigned>(++shots));
        image.save(file, "JPEG", 90);
        emit captured(file);
    }
    int shots{};
};

} // namespace

class KeepTest : public QObject {
    Q_OBJECT

private slots:
    void aFullDiskStopsThePhotosAndGoesOnWhenThereIsRoom() {
        open();
        ReadyCamera camera;
        PhotoCapture capture;
        capture.setProperty("session", QVariant::fromValue(session_.get()));
        capture.setProperty("jobId", QString::fromStdString(job_));
        capture.setProperty("purpose", QStringLiteral("as found"));
        capture.setCamera(&camera);
        capture.componentComplete();
        capture.setActive(true);
        QVERIFY(capture.ready());

        gate_->refuse(store::Problem{store::Fault::DiskFull, "no space left"});
        capture.shoot();
        QTRY_VERIFY(session_->diskFull());
        QVERIFY(session_->problem().contains(QStringLiteral("disk is full")));
        QVERIFY(!capture.ready());
        QVERIFY2(capture.stateWords().contains(QStringLiteral("make room")),
                 qPrintable(capture.stateWords()));
        capture.shoot();
        QCOMPARE(camera.shots, 1); // no further photo is taken
        QCOMPARE(QDir(QString::fromStdString(folder_.string()) + QStringLiteral("-taken"))
                     .entryList(QDir::Files)
                     .size(),
                 1); // and the one that was taken is not lost

        gate_->refuse(std::nullopt); // there is room on the real disk: it is noticed without being asked
        QTRY_VERIFY_WITH_TIMEOUT(!session_->diskFull(), 10'000);
        QVERIFY(capture.ready());
        QVERIFY(capture.stateWords().isEmpty());
        capture.shoot();
        QTRY_COMPARE(session_->saving(), ShopSession::Saving::Saved);
        QCOMPARE(store::Store::open(folder_)->job(job_)->photos.size(), std::size_t{1});
    }

    void aDamagedShopIsOpenedForLooking() {
        store::Store(std::move(*store::Store::open(folder_))); // the log goes into the database
        const QString file = QString::fromStdString((folder_ / "shop.db").string());
        QFile database(file);
        QVERIFY(database.open(QIODevice::ReadWrite));
        QByteArray content = database.readAll();
        // The page at which the schema is found stays; what is made from the entries is spoilt.
        const auto newer =
            content.indexOf(QByteArray("UCW1")); // application_id, at 68; user_version is at 60
        QCOMPARE(newer, 68);
        content[63] = 99;
        database.seek(0);
        database.write(content);
        database.close();

        open();
        QVERIFY(session_->readOnly());
        QVERIFY(session_->problem().contains(QStringLiteral("newer version")));
        session_->openJob(QString::fromStdString(job_));
        QTRY_COMPARE(session_->jobId(), QString::fromStdString(job_));
        session_->say({journal::memoKept(job_, {session_->newId(), {}, "lost?", {}, {}})});
        QTRY_COMPARE(session_->saving(), ShopSession::Saving::Failed);
        QVERIFY(session_->problem().contains(QStringLiteral("only be looked at")));
        session_.reset();
        QVERIFY(database.open(QIODevice::ReadOnly));
        QCOMPARE(database.readAll(), content);
    }

    void theWholeShopIsBackedUpFromTheScreen() {
        open();
        BackupView view;
        const QString place = onStick(view);
        QTRY_COMPARE(view.lastCopy(), QStringLiteral("none yet"));
        QVERIFY(view.places().at(view.place()) == QStringLiteral("stick"));
        QCOMPARE(view.here(), 0);
        QVERIFY(view.passphraseProblem({}, {}).isEmpty());
        QVERIFY(!view.passphraseProblem(QStringLiteral("short"), QStringLiteral("short")).isEmpty());
        QVERIFY(!view.passphraseProblem(QStringLiteral("four wet spark plugs"), {}).isEmpty());

        view.write({}, false);
        QVERIFY(view.writing());
        QTRY_VERIFY_WITH_TIMEOUT(!view.writing(), 20'000);
        QCOMPARE(session_->problem(), QString());
        QTRY_COMPARE(view.here(), 1);
        QCOMPARE(view.progress(), 1.0);
        QVERIFY2(view.result().contains(QStringLiteral("read again")), qPrintable(view.result()));
        const auto name = QDir(place).entryList(QDir::Files).at(0);
        QVERIFY(store::verifyBackup(QDir(place).filePath(name).toStdString()));
    }

    void aBackupThatIsStoppedLeavesNothing() {
        open();
        BackupView view;
        const QString place = onStick(view);
        QTRY_VERIFY(view.places().at(view.place()) == QStringLiteral("stick"));
        view.write(QStringLiteral("four wet spark plugs"), false); // its key alone takes a while
        view.cancel();
        QTRY_VERIFY_WITH_TIMEOUT(!view.writing(), 20'000);
        QCOMPARE(session_->problem(), QString()); // it was wished
        QCOMPARE(view.result(), QString());
        QCOMPARE(QDir(place).entryList(QDir::Files | QDir::Hidden), QStringList());
        view.write({}, false);
        QTRY_VERIFY_WITH_TIMEOUT(!view.writing(), 20'000);
        QCOMPARE(QDir(place).entryList(QDir::Files | QDir::Hidden).size(), 1);
    }

    void theDatabaseIsCopiedBesideItself() {
        open();
        keepRollingCopies(*session_, 10);
        QTRY_COMPARE_WITH_TIMEOUT(store::rollingBackups(folder_).size(), std::size_t{1}, 10'000);
    }

    void init() {
        dir_ = std::make_unique<QTemporaryDir>();
        folder_ = dir_->filePath(QStringLiteral("shop")).toStdString();
        auto store = store::Store::open(folder_);
        const job::Mechanic mechanic{store->newId(), "Ada"};
        QVERIFY(store->append(journal::mechanicNamed(mechanic)));
        QVERIFY(store->chooseMechanic(mechanic.id));
        job_ = store->newId();
        QVERIFY(store->append(journal::jobOpened(job_, {.number = "2026-001"})));
        gate_ = std::make_shared<Gate>();
    }
    void cleanup() {
        session_.reset();
        dir_.reset();
    }

private:
    void open() {
        session_ = std::make_unique<ShopSession>(heldShop(folder_, gate_), folder_);
        QTRY_COMPARE(session_->state(), ShopSession::State::Ready);
    }

    // Backups go into a folder of their own, whose name is given back.
    QString onStick(BackupView& view) {
        QString place = dir_->filePath(QStringLiteral("stick"));
        QDir().mkpath(place);
        session_->set(QStringLiteral("backup-place"), place);
        view.setProperty("session", QVariant::fromValue(session_.get()));
        view.componentComplete();
        return place;
    }

    std::unique_ptr<QTemporaryDir> dir_;
    std::filesystem::path folder_;
    Id job_;
    std::shared_ptr<Gate> gate_;
    std::unique_ptr<ShopSession> session_;
};

QTEST_GUILESS_MAIN(KeepTest)

#include "keep_test.moc"
