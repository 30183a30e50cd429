// The level: what gravity says, and the way from a device's accelerometer through the plugin.
#include "platform/level/devicelevel.h"

#include <QAccelerometer>
#include <QSensorBackend>
#include <QSensorManager>
#include <QTest>

#include <atomic>
#include <cmath>

using namespace undercowl::platform;

namespace {

constexpr double g = 9.81;
std::atomic<double> degrees{};
std::atomic_int running{};

// A device that is held upright and turned clockwise by so many degrees.
class Turned : public QSensorBackend {
public:
    explicit Turned(QSensor* sensor) : QSensorBackend(sensor) {
        setReading<QAccelerometerReading>(&reading_);
    }
    void start() override {
        ++running;
        const double angle = degrees * 3.14159265358979 / 180;
        reading_.setX(-g * std::sin(angle));
        reading_.setY(g * std::cos(angle));
        reading_.setZ(0.5);
        newReadingAvailable();
    }
    void stop() override { --running; }

private:
    QAccelerometerReading reading_;
};

class Maker : public QSensorBackendFactory {
public:
    QSensorBackend* createBackend(QSensor* sensor) override { return new Turned(sensor); }
};

} // namespace

class LevelTest : public QObject {
    Q_OBJECT

private slots:
    void gravityTellsTheTilt_data() {
        QTest::addColumn<double>("x");
        QTest::addColumn<double>("y");
        QTest::addColumn<double>("tilt");
        QTest::newRow("upright") << 0.0 << g << 0.0;
        QTest::newRow("its right side up") << g << 0.0 << 0.0;
        QTest::newRow("its left side up") << -g << 0.0 << 0.0;
        QTest::newRow("upside down") << 0.0 << -g << 0.0;
        QTest::newRow("ten degrees clockwise") << -g * std::sin(0.174533) << g * std::cos(0.174533) << 10.0;
        QTest::newRow("ten degrees the other way")
            << g * std::sin(0.174533) << g * std::cos(0.174533) << -10.0;
        QTest::newRow("on its side, five degrees short")
            << g * std::sin(1.48353) << g * std::cos(1.48353) << 5.0;
    }
    void gravityTellsTheTilt() {
        QFETCH(const double, x);
        QFETCH(const double, y);
        QFETCH(const double, tilt);
        const auto told = tiltOf(x, y, 1.0);
        QVERIFY(told);
        QVERIFY2(std::abs(*told - tilt) < 0.01, qPrintable(QString::number(*told)));
    }

    void flatSaysNothing() {
        QVERIFY(!tiltOf(0.3, 0.2, g));
        QVERIFY(!tiltOf(0, 0, 0));
        QVERIFY(!tiltOf(NAN, g, 0));
        QVERIFY(tiltOf(0, g, g)); // the phone leans back by half a right angle
    }

    void anAccelerometerIsReadWhileItIsWanted() {
        static Maker maker;
        QSensorManager::registerBackend(QAccelerometer::sensorType, "told", &maker);
        QSensorManager::setDefaultBackend(QAccelerometer::sensorType, "told");
        DeviceLevel level;
        QVERIFY(!level.known());
        level.stop(); // before any start
        degrees = 7;
        level.start();
        QTRY_VERIFY(level.known());
        QVERIFY(std::abs(level.tilt() - 7) < 0.01);
        level.stop();
        QVERIFY(!level.known());
        QCOMPARE(level.tilt(), 0.0);
        QTRY_COMPARE(running.load(), 0); // the sensor is let go
        degrees = -3;
        level.start();
        QTRY_VERIFY(level.known());
        QVERIFY(std::abs(level.tilt() + 3) < 0.01);
    }
};

QTEST_GUILESS_MAIN(LevelTest)

#include "level_test.moc"
