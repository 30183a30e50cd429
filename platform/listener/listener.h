// Push-to-talk: what was said between pressing and letting go, understood. Tests use one that is told what it
// hears.
#pragma once

#include "platform/ear/ear.h"

#include <QObject>
#include <QString>

namespace undercowl::platform {

class Listener : public QObject {
    Q_OBJECT
    Q_PROPERTY(State state READ state NOTIFY stateChanged)
    Q_PROPERTY(QString problem READ problem NOTIFY stateChanged)

public:
    enum class State {
        Idle,
        Listening,    // the microphone is open
        Thinking,     // it is closed; heard() comes soon
        NoMicrophone, // there is none, or the system refuses it: problem() says what to do
        Failed,       // the ear cannot be opened: problem() says why
    };
    Q_ENUM(State)

    using QObject::QObject;

    [[nodiscard]] State state() const { return state_; }
    [[nodiscard]] QString problem() const { return problem_; } // empty unless NoMicrophone or Failed

    // Opens the microphone; ignored while Listening or Thinking. The first call opens the ear too, on another
    // thread.
    virtual void start() = 0;
    // Closes it; what was said is heard, on another thread. Ignored unless Listening.
    virtual void stop() = 0;

signals:
    void stateChanged();
    void heard(const undercowl::platform::Heard& what);

protected:
    void setState(State state, const QString& problem = {});

private:
    State state_{State::Idle};
    QString problem_;
};

} // namespace undercowl::platform
