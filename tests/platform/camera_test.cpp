// What a camera can do, on this side of its interface, by the camera that takes its pictures from files; and
// the device's own where there is none.
#include "platform/camera/devicecamera.h"
#include "platform/camera/filecamera.h"

#include <QPainter>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <cmath>

using namespace undercowl::platform;

namespace {

// Stripes of dark and middling grey, upright: the sharper, the larger the greatest step between two pixels.
QImage stripes() {
    QImage picture(800, 600, QImage::Format_RGB888);
    picture.fill(QColor(40, 40, 40));
    QPainter painter(&picture);
    for (int x = 0; x < picture.width(); x += 40)
        painter.fillRect(x, 0, 20, picture.height(), QColor(120, 120, 120));
    return picture;
}

int greatestStep(const QImage& picture, double across) {
    const int y = picture.height() / 2;
    const int middle = static_cast<int>(across * picture.width());
    int step = 0;
    for (int x = std::max(1, middle - 40); x < std::min(picture.width(), middle + 40); ++x)
        step = std::max(step, std::abs(qGray(picture.pixel(x, y)) - qGray(picture.pixel(x - 1, y))));
    return step;
}

int stripesIn(const QImage& picture) {
    const int y = picture.height() / 2;
    int count = 0;
    for (int x = 1; x < picture.width(); ++x)
        if (qGray(picture.pixel(x - 1, y)) < 80 && qGray(picture.pixel(x, y)) >= 80)
            ++count;
    return count;
}

} // namespace

class CameraTest : public QObject {
    Q_OBJECT

private slots:
    void aCameraThatCanNothingDoesNothing() {
        FileCamera camera(folder_.path());
        QSignalSpy changes(&camera, &Camera::torchChanged);
        camera.start();
        QVERIFY(!camera.canFocus() && !camera.canLight());
        QCOMPARE(camera.mostZoom(), 1.0);
        camera.setTorch(true);
        camera.setZoom(2);
        camera.focusAt({0.5, 0.5});
        QVERIFY(!camera.torch());
        QCOMPARE(camera.zoom(), 1.0);
        QVERIFY(changes.isEmpty());
        const QString file = folder_.filePath(QStringLiteral("shot"));
        QSignalSpy taken(&camera, &Camera::captured);
        camera.capture(file);
        QCOMPARE(taken.size(), 1);
        QFile kept(file);
        QFile source(picture_);
        QVERIFY(kept.open(QIODevice::ReadOnly) && source.open(QIODevice::ReadOnly));
        QCOMPARE(kept.readAll(), source.readAll());
    }

    void zoomShowsTheMiddleAndIsKeptWithinWhatTheDeviceCan() {
        FileCamera camera(folder_.path(), {.mostZoom = 4});
        const QImage whole = lastFrame(camera, [&] { camera.start(); });
        const QImage half = lastFrame(camera, [&] { camera.setZoom(2); });
        QCOMPARE(camera.zoom(), 2.0);
        QCOMPARE(half.width(), whole.width() / 2);
        QVERIFY(std::abs(stripesIn(half) - stripesIn(whole) / 2) <= 1);
        camera.setZoom(9);
        QCOMPARE(camera.zoom(), 4.0);
        camera.setZoom(0.1);
        QCOMPARE(camera.zoom(), 1.0);
    }

    void thePhotoIsWhatWasSeen() {
        FileCamera camera(folder_.path(), {.torch = true, .mostZoom = 2});
        camera.start();
        camera.setZoom(2);
        camera.setTorch(true);
        const QString file = folder_.filePath(QStringLiteral("seen"));
        camera.capture(file);
        const QImage photo(file);
        QCOMPARE(photo.size(), QSize(400, 300));
        QVERIFY(qGray(photo.pixel(10, 10)) > 150); // 120, lit
    }

    void theTorchBrightensAndGoesOutWithTheCamera() {
        FileCamera camera(folder_.path(), {.torch = true, .mostZoom = 2});
        camera.setTorch(true); // not started: whoever left the page lights nothing
        QVERIFY(!camera.torch());
        const QImage dark = lastFrame(camera, [&] { camera.start(); });
        const QImage lit = lastFrame(camera, [&] { camera.setTorch(true); });
        QVERIFY(camera.torch());
        QVERIFY(qGray(lit.pixel(10, 10)) > qGray(dark.pixel(10, 10)) + 30);
        camera.setZoom(2);
        QSignalSpy torch(&camera, &Camera::torchChanged);
        QSignalSpy zoom(&camera, &Camera::zoomChanged);
        camera.stop();
        QVERIFY(!camera.torch());
        QCOMPARE(camera.zoom(), 1.0);
        QCOMPARE(torch.size(), 1);
        QCOMPARE(zoom.size(), 1);
    }

    void focusIsWhereItWasAskedFor() {
        FileCamera camera(folder_.path(), {.focus = true});
        const QImage soft = lastFrame(camera, [&] { camera.start(); });
        const QImage left = lastFrame(camera, [&] { camera.focusAt({0.2, 0.5}); });
        QVERIFY(greatestStep(soft, 0.2) < 30);
        QVERIFY(greatestStep(left, 0.2) > 45);
        QVERIFY(greatestStep(left, 0.8) < 30);
        const QImage outside = lastFrame(camera, [&] { camera.focusAt({7, -3}); });
        QVERIFY(!outside.isNull()); // kept within the picture
    }

    void aDeviceWithoutACameraSaysSo() {
        DeviceCamera camera;
        QCOMPARE(camera.abilities(), CameraAbilities{});
        camera.setTorch(true); // before there is a driver
        camera.focusAt({0.5, 0.5});
        camera.start();
        if (camera.state() != Camera::State::NoCamera)
            QSKIP("this machine has a camera");
        QVERIFY(!camera.canLight());
        camera.setTorch(true);
        QVERIFY(!camera.torch());
        camera.stop();
        QCOMPARE(camera.state(), Camera::State::Off);
    }

    void initTestCase() {
        picture_ = folder_.filePath(QStringLiteral("a.jpg"));
        QVERIFY(stripes().save(picture_, "JPEG", 95));
    }

private:
    template<typename Act>
    static QImage lastFrame(Camera& camera, const Act& act) {
        QImage last;
        const auto seen =
            QObject::connect(&camera, &Camera::frame, &camera, [&](const QImage& frame) { last = frame; });
        act();
        QObject::disconnect(seen);
        return last;
    }

    QTemporaryDir folder_;
    QString picture_;
};

QTEST_GUILESS_MAIN(CameraTest)

#include "camera_test.moc"
