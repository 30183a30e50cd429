// Short tones and vibration, for whoever does not look at the screen. What a device offers is behind it;
// tests use one that only remembers.
#pragma once

#include <QObject>

namespace undercowl::platform {

class Signaller : public QObject {
    Q_OBJECT

public:
    enum class Signal {
        Listening, // the microphone is open for a command
        Recording, // a memo begins
        Saved,     // what was said or done is in the store
        Refused,   // it was not taken: the screen says why
    };
    Q_ENUM(Signal)

    using QObject::QObject;

    // Returns at once. In place of one that still sounds. A device that cannot is silent: nothing depends on
    // it.
    Q_INVOKABLE virtual void give(undercowl::platform::Signaller::Signal signal) = 0;
};

} // namespace undercowl::platform
