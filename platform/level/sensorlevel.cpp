#include "platform/level/sensorlevel.h"

#include "platform/threads/across.h"

#include <QAccelerometer>
#include <QPointer>

#include <memory>

namespace undercowl::platform {

class SensorLevel::Desk : public QObject {
public:
    std::unique_ptr<QAccelerometer> sensor; // made on the thread
};

SensorLevel::SensorLevel(QObject* parent) : Level(parent), desk_(new Desk) {
    desk_->moveToThread(&thread_);
    connect(&thread_, &QThread::finished, desk_, &QObject::deleteLater);
    thread_.setObjectName(QStringLiteral("level"));
    thread_.start();
}

SensorLevel::~SensorLevel() {
    thread_.quit();
    thread_.wait();
}

void SensorLevel::start() {
    constexpr int eachSecond = 10;
    across(desk_, [desk = desk_, self = QPointer(this), run = ++run_] {
        desk->sensor = std::make_unique<QAccelerometer>();
        auto* sensor = desk->sensor.get();
        sensor->setAccelerationMode(QAccelerometer::Combined); // gravity is in it, and every phone has it
        sensor->setDataRate(eachSecond);
        QObject::connect(sensor, &QAccelerometer::readingChanged, desk, [sensor, self, run] {
            const auto* reading = sensor->reading();
            const auto tilt = tiltOf(reading->x(), reading->y(), reading->z());
            toTouch([self, run, tilt] {
                if (self != nullptr && self->run_ == run)
                    self->tell(tilt);
            });
        });
        sensor->start(); // where there is none, it says so, and nothing is told
    });
}

void SensorLevel::stop() {
    ++run_;
    across(desk_, [desk = desk_] { desk->sensor.reset(); });
    tell(std::nullopt);
}

} // namespace undercowl::platform
