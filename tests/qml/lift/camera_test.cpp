// The camera's page by touch, by the keys that phones and remotes have, and by what it says while one aims.
#include "appwindow.h"

#include "qml/shell/camerahints.h"
#include "qml/shell/photocapture.h"

#include <QGuiApplication>
#include <QImage>
#include <QPainter>
#include <QTimer>
#include <QtQml/qqmlextensionplugin.h>

#include <cmath>

Q_IMPORT_QML_PLUGIN(Undercowl_StylePlugin)
Q_IMPORT_QML_PLUGIN(UndercowlPlugin)

using namespace undercowl;
using namespace undercowl::ui;
using State = platform::Camera::State;

namespace {

// Crossed stripes of one colour, as a camera sees them that is held 'across' pixels further to the left.
QImage scene(QColor light, QColor dark, int across = 0) {
    QImage picture(800, 600, QImage::Format_RGB888);
    picture.fill(dark);
    QPainter painter(&picture);
    for (int x = -across % 80; x < picture.width(); x += 80)
        painter.fillRect(x, 0, 40, picture.height(), light);
    for (int y = 0; y < picture.height(); y += 90)
        painter.fillRect(0, y, picture.width(), 20, dark.darker());
    return picture;
}

// Shows what the test shows it.
class ShownCamera : public platform::Camera {
public:
    explicit ShownCamera(State after = State::Ready) : after_(after) {
        frames_.setInterval(40);
        QObject::connect(&frames_, &QTimer::timeout, this, [this] {
            at_ += step;
            emit frame(scene(Qt::white, QColor(60, 60, 60), at_));
        });
    }
    void start() override {
        setState(after_);
        if (after_ == State::Ready)
            frames_.start();
    }
    void stop() override {
        frames_.stop();
        setState(State::Off);
    }
    void capture(const QString& file) override {
        scene(Qt::white, Qt::black).save(file, "JPEG");
        ++shots;
        emit captured(file);
    }
    int step{}; // pixels that the hand moves from one frame to the next
    int shots{};

private:
    State after_;
    QTimer frames_;
    int at_{};
};

QVariantMap about(const LiftShop& shop, const char* purpose) {
    return {{QStringLiteral("jobId"), QString::fromStdString(shop.job)},
            {QStringLiteral("purpose"), QString::fromLatin1(purpose)},
            {QStringLiteral("title"), QStringLiteral("Marrowin Tern 125")}};
}

// A shop whose window shows the camera's page on that camera.
struct Lift {
    explicit Lift(std::unique_ptr<platform::Camera> camera = nullptr, const char* purpose = "other")
        : session(shop.session()), app(*session, {360, 640}, std::move(camera)) {
        app.show("CameraPage", about(shop, purpose));
    }
    [[nodiscard]] bool says(const char* words) { return app.label(QString::fromLatin1(words)) != nullptr; }
    // Qt's own click knows no keys of phones.
    void press(int key, bool repeated = false) {
        QKeyEvent down(QEvent::KeyPress, key, Qt::NoModifier, QString(), repeated);
        QCoreApplication::sendEvent(&app.window(), &down);
        QKeyEvent up(QEvent::KeyRelease, key, Qt::NoModifier, QString(), repeated);
        QCoreApplication::sendEvent(&app.window(), &up);
    }
    [[nodiscard]] std::size_t photos() const { return shop.stored().photos.size(); }

    LiftShop shop;
    std::unique_ptr<ShopSession> session;
    AppWindow app;
};

std::unique_ptr<platform::Camera> able(platform::CameraAbilities abilities) {
    return std::make_unique<platform::FileCamera>(QStringLiteral(UNDERCOWL_PHOTOS), abilities);
}

QPointF middleOf(const QQuickItem& item) {
    return item.mapToScene({item.width() / 2, item.height() / 2});
}

} // namespace

class CameraTest : public QObject {
    Q_OBJECT

private slots:
    void theKeysOfPhonesAndRemotesAreTheShutter_data() {
        QTest::addColumn<int>("key");
        QTest::newRow("volume up") << int(Qt::Key_VolumeUp);
        QTest::newRow("volume down") << int(Qt::Key_VolumeDown);
        QTest::newRow("camera") << int(Qt::Key_Camera);
        QTest::newRow("space") << int(Qt::Key_Space);
        QTest::newRow("return") << int(Qt::Key_Return);
        QTest::newRow("enter") << int(Qt::Key_Enter);
    }
    void theKeysOfPhonesAndRemotesAreTheShutter() {
        QFETCH(const int, key);
        Lift lift;
        const std::size_t before = lift.photos();
        lift.press(key);
        QTRY_COMPARE(lift.photos(), before + 1);
        // Held down, it is still one photo.
        lift.press(key, true);
        QTest::qWait(300);
        QCOMPARE(lift.photos(), before + 1);
    }

    void elsewhereTheKeysAreNone() {
        Lift lift;
        const std::size_t before = lift.photos();
        QVERIFY(lift.app.touch(QStringLiteral("Done")));
        QTRY_VERIFY(lift.app.button(QStringLiteral("Shoot")) == nullptr);
        lift.press(Qt::Key_VolumeUp);
        QTest::qWait(300);
        QCOMPARE(lift.photos(), before);
    }

    void whatTheDeviceCannotIsNotOffered() {
        Lift lift;
        QVERIFY(lift.app.button(QStringLiteral("Shoot")) != nullptr);
        QVERIFY(lift.app.button(QStringLiteral("Torch")) == nullptr);
        QVERIFY(lift.app.button(QStringLiteral("Zoom")) == nullptr);
    }

    void theTorchGoesOutWithThePage() {
        Lift lift(able({.torch = true}));
        QVERIFY(lift.app.touch(QStringLiteral("Torch on")));
        QVERIFY(lift.app.camera().torch());
        QVERIFY(lift.app.touch(QStringLiteral("Torch off")));
        QVERIFY(!lift.app.camera().torch());
        QVERIFY(lift.app.touch(QStringLiteral("Torch on")));
        QVERIFY(lift.app.touch(QStringLiteral("Done")));
        QTRY_COMPARE(lift.app.camera().state(), State::Off);
        QVERIFY(!lift.app.camera().torch());
    }

    void theCameraIsReleasedWhileThePhoneIsLocked() {
        Lift lift(able({.torch = true}));
        QVERIFY(lift.app.touch(QStringLiteral("Torch on")));
        emit qGuiApp->applicationStateChanged(Qt::ApplicationSuspended);
        QCOMPARE(lift.app.camera().state(), State::Off);
        QVERIFY(!lift.app.camera().torch());
        QVERIFY(!lift.app.level().started);
        emit qGuiApp->applicationStateChanged(Qt::ApplicationActive);
        QCOMPARE(lift.app.camera().state(), State::Ready);
        emit qGuiApp->applicationStateChanged(Qt::ApplicationInactive); // another window has the keys
        QCOMPARE(lift.app.camera().state(), State::Ready);
    }

    void zoomGoesRoundByTouches() {
        Lift lift(able({.mostZoom = 5}));
        for (const double factor : {2.0, 4.0, 1.0, 2.0}) {
            QVERIFY(lift.app.touch(QStringLiteral("Zoom %1x").arg(factor)));
            QCOMPARE(lift.app.camera().zoom(), factor);
        }
        QVERIFY(lift.says("2x"));
        Lift little(able({.mostZoom = 1.5})); // not worth a button
        QVERIFY(little.app.button(QStringLiteral("Zoom")) == nullptr);
    }

    void aTapFocusesThereAndTheWordsAskForIt() {
        Lift lift(able({.focus = true}), "wiring");
        QTRY_VERIFY(lift.says("Too close or out of focus: tap the wire."));
        const QQuickItem* picture = lift.app.having("isLevel");
        QVERIFY(picture != nullptr);
        QVERIFY(lift.app.touchAt(middleOf(*picture)));
        QTRY_VERIFY(!lift.says("Too close or out of focus: tap the wire."));
        // The shutter is never held up by what is said.
        QVERIFY(lift.app.button(QStringLiteral("Shoot")) != nullptr);
    }

    void theShutterKeyHalfwayFocusesOnTheMiddle() {
        Lift lift(able({.focus = true}));
        const std::size_t before = lift.photos();
        QTRY_VERIFY(lift.says("Too close or out of focus: tap what must be sharp."));
        lift.press(Qt::Key_CameraFocus);
        QTRY_VERIFY(!lift.says("Too close or out of focus: tap what must be sharp."));
        QCOMPARE(lift.photos(), before);
    }

    void aCameraThatCannotFocusIsMovedBack() {
        const QTemporaryDir folder;
        const QImage sharp = scene(Qt::white, Qt::black);
        QVERIFY(sharp.scaled(80, 60, Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
                    .scaled(800, 600, Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
                    .save(folder.filePath(QStringLiteral("a.jpg")), "JPEG", 95));
        Lift lift(std::make_unique<platform::FileCamera>(folder.path()));
        QTRY_VERIFY(lift.says("Too close or out of focus: move back a little."));
        // Said, not enforced.
        const std::size_t before = lift.photos();
        QVERIFY(lift.app.touch(QStringLiteral("Shoot")));
        QTRY_COMPARE(lift.photos(), before + 1);
    }

    void whiteIsAskedForOnlyWhereWiresAreRead() {
        const QTemporaryDir folder;
        QVERIFY(scene(QColor(190, 30, 30), QColor(90, 15, 15))
                    .save(folder.filePath(QStringLiteral("red.jpg")), "JPEG", 95));
        Lift wires(std::make_unique<platform::FileCamera>(folder.path()), "wiring");
        QTRY_VERIFY(wires.says("Lay white paper beside the wires."));
        Lift other(std::make_unique<platform::FileCamera>(folder.path()), "strip");
        QTest::qWait(800);
        QVERIFY(!other.says("Lay white paper beside the wires."));
    }

    void aHandThatMovesIsToldToHoldStill() {
        auto shown = std::make_unique<ShownCamera>();
        ShownCamera& camera = *shown;
        Lift lift(std::move(shown));
        QTest::qWait(800);
        QVERIFY(!lift.says("Hold still."));
        camera.step = 8; // a hundredth of the width in 40 ms
        QTRY_VERIFY(lift.says("Hold still."));
        QVERIFY(lift.app.touch(QStringLiteral("Shoot"))); // said, not enforced
        QTRY_COMPARE(camera.shots, 1);
        camera.step = 0;
        QTRY_VERIFY(!lift.says("Hold still."));
    }

    void theLevelIsShownWhereTheDeviceTells() {
        Lift lift;
        QQuickItem* picture = lift.app.having("isLevel");
        QVERIFY(picture != nullptr);
        QVERIFY(lift.app.level().started);
        QVERIFY(!picture->property("levelKnown").toBool());
        lift.app.level().say(7);
        QVERIFY(picture->property("levelKnown").toBool());
        QVERIFY(!picture->property("isLevel").toBool());
        lift.app.level().say(-1);
        QVERIFY(picture->property("isLevel").toBool());
        QVERIFY(lift.app.touch(QStringLiteral("Done")));
        QTRY_VERIFY(!lift.app.level().started);
    }

    void withoutACameraOrPermissionPhotosComeFromFiles_data() {
        QTest::addColumn<int>("state");
        QTest::newRow("none") << int(State::NoCamera);
        QTest::newRow("denied") << int(State::Denied);
        QTest::newRow("failed") << int(State::Failed);
    }
    void withoutACameraOrPermissionPhotosComeFromFiles() {
        QFETCH(const int, state);
        auto shown = std::make_unique<ShownCamera>(static_cast<State>(state));
        const ShownCamera& camera = *shown;
        Lift lift(std::move(shown));
        QVERIFY(lift.app.button(QStringLiteral("Shoot")) == nullptr);
        QVERIFY(lift.app.having("isLevel") == nullptr);
        QVERIFY(lift.app.having("cell") != nullptr); // the grid of pictures on the device
        lift.press(Qt::Key_Space);
        lift.press(Qt::Key_VolumeUp);
        QCOMPARE(camera.shots, 0);
        const auto* capture = lift.app.view<PhotoCapture>();
        QVERIFY(capture != nullptr);
        if (state != int(State::Failed)) // whoever fails says himself why
            QVERIFY(lift.app.label(capture->stateWords()) != nullptr);
        QVERIFY(lift.app.button(QStringLiteral("Done")) != nullptr);
    }
};

QTEST_MAIN(CameraTest)

#include "camera_test.moc"
