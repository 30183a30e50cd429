// Photos on their way into the store: upright sizes, what is refused, and what an interrupted run left
// behind; several pictures to one touch.
#include "core/journal/say.h"
#include "platform/camera/filecamera.h"
#include "qml/shell/burst.h"
#include "qml/shell/pendingphotos.h"
#include "qml/shell/photocapture.h"
#include "qml/shell/photofile.h"
#include "qml/shell/session.h"

#include <QBuffer>
#include <QDir>
#include <QFile>
#include <QImage>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include <chrono>

using namespace undercowl;
using namespace undercowl::ui;

namespace {

QByteArray jpeg(int width, int height, QRgb colour = 0xff336699) {
    QImage image(width, height, QImage::Format_RGB32);
    image.fill(colour);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "JPEG", 90);
    return bytes;
}

// The JPEG with an EXIF block that holds nothing but the orientation (tag 0x0112, TIFF 6.0, little endian).
QByteArray turned(QByteArray bytes, int orientation) {
    QByteArray exif("Exif\0\0II*\0\x08\0\0\0\x01\0\x12\x01\x03\0\x01\0\0\0", 24);
    exif.append(static_cast<char>(orientation)).append(QByteArray(7, '\0'));
    const int length = static_cast<int>(exif.size()) + 2;
    QByteArray segment("\xff\xe1", 2);
    segment.append(static_cast<char>(length >> 8)).append(static_cast<char>(length & 0xff)).append(exif);
    return bytes.insert(2, segment);
}

// A fence before a wall, taken by a hand that trembles by so many pixels.
QByteArray fence(int tremble) {
    QImage image(400, 300, QImage::Format_RGB32);
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) {
            int sum = 0;
            for (int part = 0; part <= tremble; ++part)
                sum += (x + part) / 20 % 2 == 0 && y / 30 % 2 == 0 ? 200 : 60;
            const int level = sum / (tremble + 1);
            image.setPixel(x, y, qRgb(level, level, level));
        }
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "JPEG", 90);
    return bytes;
}

// Takes its time, and may never answer the second picture.
class SlowCamera : public platform::Camera {
public:
    SlowCamera(std::chrono::milliseconds takes, int answers) : takes_(takes), answers_(answers) {}
    void start() override {
        setAbilities({.burst = 3});
        setState(State::Ready);
    }
    void stop() override { setState(State::Off); }
    void capture(const QString& file) override {
        setState(State::Busy);
        if (++asked > answers_)
            return;
        QTimer::singleShot(takes_, this, [this, file] {
            QFile picture(file);
            if (picture.open(QIODevice::WriteOnly))
                picture.write(fence(asked));
            picture.close();
            emit captured(file);    // some devices are ready only after they have told,
            setState(State::Ready); // others before
        });
    }
    int asked{};

private:
    std::chrono::milliseconds takes_;
    int answers_;
};

void write(const QString& path, const QByteArray& bytes) {
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size())
        qFatal("%s", qPrintable(file.errorString()));
}

} // namespace

class PhotosTest : public QObject {
    Q_OBJECT

private slots:
    void sizesAreThoseOfTheUprightPhoto_data() {
        QTest::addColumn<int>("orientation");
        for (int orientation = 1; orientation <= 8; ++orientation)
            QTest::addRow("%d", orientation) << orientation;
    }
    void sizesAreThoseOfTheUprightPhoto() {
        QFETCH(const int, orientation);
        const QString path = dir_->filePath(QStringLiteral("a.jpg"));
        const QByteArray bytes = turned(jpeg(64, 32), orientation);
        write(path, bytes);
        const auto photo = readPhotoFile(path);
        QVERIFY(photo);
        const bool onItsSide = orientation >= 5; // EXIF 2.3: 5 to 8 exchange rows and columns
        QCOMPARE(photo->width, onItsSide ? 32 : 64);
        QCOMPARE(photo->height, onItsSide ? 64 : 32);
        QCOMPARE(photo->bytes, bytes); // the original is kept as it is
    }

    void whereItWasTakenIsLeftOutUnlessItIsWished() {
        const QString path = dir_->filePath(QStringLiteral("a.jpg"));
        QByteArray bytes = turned(jpeg(64, 32), 6);
        QByteArray xmp("http://ns.adobe.com/xap/1.0/\0<x:xmpmeta exif:GPSLatitude='52,31N'/>", 66);
        const int length = static_cast<int>(xmp.size()) + 2;
        bytes.insert(2, QByteArray("\xff\xe1", 2)
                            .append(static_cast<char>(length >> 8))
                            .append(static_cast<char>(length & 0xff))
                            .append(xmp));
        write(path, bytes);
        const auto photo = readPhotoFile(path);
        QVERIFY(photo);
        QVERIFY(!photo->bytes.contains("GPSLatitude"));
        QCOMPARE(photo->width, 32); // still upright
        QCOMPARE(readPhotoFile(path, true)->bytes, bytes);

        session_->set(QStringLiteral("location"), QStringLiteral("kept"));
        for (const bool kept : {true, false}) {
            bool saved = false;
            session_->keepPhoto({.file = path, .job = job_, .purpose = {}, .about = {}, .note = {}}, {},
                                [&](const Entries& said) { saved = said.has_value(); });
            QTRY_VERIFY(saved);
            const auto store = store::Store::open(folder_);
            QFile media(
                QString::fromStdString(store->media(store->job(job_)->photos.back().media)->string()));
            QVERIFY(media.open(QIODevice::ReadOnly));
            QCOMPARE(media.readAll().contains("GPSLatitude"), kept);
            session_->set(QStringLiteral("location"), QStringLiteral("left out"));
        }
        QFile original(path);
        QVERIFY(original.open(QIODevice::ReadOnly));
        QCOMPARE(original.readAll(), bytes);
    }

    void whatIsNoPictureIsRefusedByName() {
        const QString path = dir_->filePath(QStringLiteral("notes.jpg"));
        write(path, "no picture at all");
        const auto refused = readPhotoFile(path);
        QVERIFY(!refused);
        QCOMPARE(refused.error().fault, store::Fault::Refused);
        QVERIFY(QString::fromStdString(refused.error().message).contains(QStringLiteral("notes.jpg")));
        const auto gone = readPhotoFile(dir_->filePath(QStringLiteral("gone.jpg")));
        QVERIFY(!gone);
        QCOMPARE(gone.error().fault, store::Fault::NotFound);
    }

    void aPhotoIsInTheStoreBeforeItsFileGoes() {
        const QString path = dir_->filePath(QStringLiteral("taken.jpg"));
        write(path, jpeg(40, 30));
        bool saved = false;
        session_->keepPhoto({.file = path,
                             .job = job_,
                             .purpose = job::PhotoPurpose::AsFound,
                             .about = {},
                             .note = QStringLiteral(" left side "),
                             .ours = true},
                            {}, [&](const Entries& said) { saved = said.has_value(); });
        QTRY_VERIFY(saved);
        QVERIFY(!QFile::exists(path));
        const auto store = store::Store::open(folder_);
        const auto photos = store->job(job_)->photos;
        QCOMPARE(photos.size(), std::size_t{1});
        QCOMPARE(photos.front().note, std::string("left side"));
        QCOMPARE(photos.front().width, 40);
        QVERIFY(store->media(photos.front().media));
    }

    void whatAnInterruptedRunTookIsKeptOnce() {
        const QString folder = takenFolder(*session_);
        const PhotoToKeep about{.file = {},
                                .job = job_,
                                .purpose = job::PhotoPurpose::AsFound,
                                .about = {},
                                .note = {},
                                .ours = true};
        const QString whole = takenName(folder, about, session_->newId());
        const QString cut = takenName(folder, about, session_->newId());
        const QString foreign = folder + QStringLiteral("/holiday.jpg");
        write(whole, jpeg(40, 30));
        const QByteArray other = jpeg(400, 300, 0xff993311);
        write(cut, other.left(100));
        write(foreign, other);

        int kept = -1;
        rescueTakenPhotos(*session_, [&](int count) { kept = count; });
        QTRY_COMPARE(kept, 1);
        QVERIFY(!QFile::exists(whole));
        QVERIFY(QFile::exists(cut)); // not ours to throw away
        QVERIFY(QFile::exists(foreign));

        // The program ended after the entry and before the file was removed: the photo is not said twice.
        write(whole, jpeg(40, 30));
        kept = -1;
        rescueTakenPhotos(*session_, [&](int count) { kept = count; });
        QTRY_COMPARE(kept, 0);
        QVERIFY(!QFile::exists(whole));
        QCOMPARE(store::Store::open(folder_)->job(job_)->photos.size(), std::size_t{1});
    }

    void oneTouchTakesThreeAndKeepsTheSharpest() {
        const QString seen = dir_->filePath(QStringLiteral("seen"));
        QDir().mkpath(seen);
        const QByteArray sharp = fence(0);
        write(seen + QStringLiteral("/1.jpg"), fence(6));
        write(seen + QStringLiteral("/2.jpg"), sharp);
        write(seen + QStringLiteral("/3.jpg"), fence(3));
        platform::FileCamera camera(seen, {.burst = 3});
        const auto capture = capturing(camera);
        capture->shoot();
        QTRY_COMPARE(capture->taken()->count(), 1);
        const auto store = store::Store::open(folder_);
        const auto photos = store->job(job_)->photos;
        QCOMPARE(photos.size(), std::size_t{1});
        QFile media(QString::fromStdString(store->media(photos.front().media)->string()));
        QVERIFY(media.open(QIODevice::ReadOnly));
        QCOMPARE(media.readAll(), sharp);
        QVERIFY(QDir(takenFolder(*session_)).isEmpty());
        QVERIFY(capture->ready());
    }

    void aSlowCameraTakesOne() {
        SlowCamera camera(std::chrono::milliseconds(600), 3);
        const auto capture = capturing(camera);
        capture->shoot();
        QTRY_COMPARE(capture->taken()->count(), 1);
        QCOMPARE(camera.asked, 1);
    }

    void aQuickOneThatTellsBeforeItIsReadyTakesMore() {
        SlowCamera camera(std::chrono::milliseconds(10), 3);
        const auto capture = capturing(camera);
        capture->shoot();
        QTRY_COMPARE(capture->taken()->count(), 1);
        QCOMPARE(camera.asked, 3);
        QCOMPARE(store::Store::open(folder_)->job(job_)->photos.size(), std::size_t{1});
    }

    void leavingInBetweenKeepsWhatWasTaken() {
        SlowCamera camera(std::chrono::milliseconds(10), 1);
        auto capture = capturing(camera);
        capture->shoot();
        QTRY_COMPARE(camera.asked, 2); // the second is never answered
        QVERIFY(capture->busy());
        capture->setActive(false);
        QTRY_COMPARE(capture->taken()->count(), 1);
        QVERIFY(!capture->busy());

        SlowCamera other(std::chrono::milliseconds(10), 1);
        capture = capturing(other);
        capture->shoot();
        QTRY_COMPARE(other.asked, 2);
        capture.reset(); // the page is gone
        QTRY_VERIFY(QDir(takenFolder(*session_)).isEmpty());
        QTRY_COMPARE(store::Store::open(folder_)->job(job_)->photos.size(), std::size_t{2});
    }

    void whatWasCutInABurstIsKeptOnce() {
        const QString first = takenName(takenFolder(*session_),
                                        {.file = {},
                                         .job = job_,
                                         .purpose = job::PhotoPurpose::AsFound,
                                         .about = {},
                                         .note = {},
                                         .ours = true},
                                        session_->newId());
        const QByteArray sharp = fence(0);
        write(first, fence(5));
        write(burstName(first, 2), sharp);
        write(burstName(first, 3), fence(0).left(300)); // the phone died here
        QCOMPARE(burstOf(burstName(first, 3)), first);
        QCOMPARE(burstOf(first), first);
        int kept = -1;
        rescueTakenPhotos(*session_, [&](int count) { kept = count; });
        QTRY_COMPARE(kept, 1);
        QVERIFY(QDir(takenFolder(*session_)).isEmpty());
        const auto store = store::Store::open(folder_);
        QFile media(QString::fromStdString(store->media(store->job(job_)->photos.front().media)->string()));
        QVERIFY(media.open(QIODevice::ReadOnly));
        QCOMPARE(media.readAll(), sharp);
    }

    void aNameSaysWhatThePhotoIsAbout() {
        const auto photo = photoOfTakenName(takenName(QStringLiteral("/x"),
                                                      {.file = {},
                                                       .job = job_,
                                                       .purpose = job::PhotoPurpose::AsFound,
                                                       .about = "0190-step",
                                                       .note = {},
                                                       .ours = true},
                                                      "0190-unique"));
        QVERIFY(photo);
        QCOMPARE(photo->job, job_);
        QCOMPARE(photo->purpose, job::PhotoPurpose::AsFound);
        QCOMPARE(photo->about, std::string("0190-step"));
        QVERIFY(!photoOfTakenName(QStringLiteral("/x/holiday.jpg")));
        QVERIFY(!photoOfTakenName(QStringLiteral("/x/a_nonsense_b_c.jpg")));
    }

    void init() {
        dir_ = std::make_unique<QTemporaryDir>();
        folder_ = dir_->filePath(QStringLiteral("shop")).toStdString();
        {
            auto store = store::Store::open(folder_);
            const job::Mechanic mechanic{store->newId(), "Ada"};
            QVERIFY(store->append(journal::mechanicNamed(mechanic)));
            QVERIFY(store->chooseMechanic(mechanic.id));
            job_ = store->newId();
            QVERIFY(store->append(journal::jobOpened(job_, {.number = "2026-001"})));
        }
        session_ = std::make_unique<ShopSession>(shopInFolder(folder_), folder_);
        QTRY_COMPARE(session_->state(), ShopSession::State::Ready);
    }
    void cleanup() {
        session_.reset();
        dir_.reset();
    }

private:
    [[nodiscard]] std::unique_ptr<PhotoCapture> capturing(platform::Camera& camera) const {
        auto capture = std::make_unique<PhotoCapture>();
        capture->setProperty("session", QVariant::fromValue(session_.get()));
        capture->setProperty("jobId", QString::fromStdString(job_));
        capture->setProperty("purpose", QStringLiteral("as found"));
        capture->setCamera(&camera);
        capture->componentComplete();
        capture->setActive(true);
        return capture;
    }

    std::unique_ptr<QTemporaryDir> dir_;
    std::filesystem::path folder_;
    Id job_;
    std::unique_ptr<ShopSession> session_;
};

QTEST_GUILESS_MAIN(PhotosTest)

#include "photos_test.moc"
