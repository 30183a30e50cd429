// The level by the device's accelerometer, through Qt Sensors.
#pragma once

#include "platform/level/level.h"

#include <QThread>

namespace undercowl::platform {

// The sensor lives on a thread of its own: finding one may ask the system, which may take its time.
class SensorLevel : public Level {
    Q_OBJECT

public:
    explicit SensorLevel(QObject* parent = nullptr);
    ~SensorLevel() override;

    void start() override;
    void stop() override;

private:
    class Desk;
    QThread thread_;
    Desk* desk_{}; // lives on the thread
    int run_{};    // what an earlier start() still tells comes too late
};

} // namespace undercowl::platform
