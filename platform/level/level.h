// How far the device is tilted while a picture is aimed, as narrow as the capture screen needs it.
#pragma once

#include <QObject>

#include <optional>

namespace undercowl::platform {

class Level : public QObject {
    Q_OBJECT
    Q_PROPERTY(bool known READ known NOTIFY changed)
    Q_PROPERTY(double tilt READ tilt NOTIFY changed)

public:
    using QObject::QObject;

    // False where the device has nothing to tell it by, before it told, and while it lies flat: which side of
    // a picture of the floor is down is nobody's to say.
    [[nodiscard]] bool known() const { return tilt_.has_value(); }
    // Degrees clockwise from the nearest upright or level position, -45 to 45; 0 while not known.
    [[nodiscard]] double tilt() const { return tilt_.value_or(0); }

    // Tells only between start() and stop().
    virtual void start() = 0;
    virtual void stop() = 0;

signals:
    void changed();

protected:
    void tell(std::optional<double> tilt);

private:
    std::optional<double> tilt_;
};

// What gravity along the device's axes (x to the right, y up, z out of the screen, of the device held
// upright; any unit) says; nothing for a device that lies within 30 degrees of flat.
[[nodiscard]] std::optional<double> tiltOf(double x, double y, double z);

} // namespace undercowl::platform
