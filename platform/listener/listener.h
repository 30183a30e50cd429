// Push-to-talk: what was said between pressing and letting go, understood. And hands-free, where that is
// switched on: after the wake phrase. Tests use one that is told what it hears.
#pragma once

#include "platform/ear/ear.h"

#include <QObject>
#include <QString>

#include <set>

namespace undercowl::platform {

class Listener : public QObject {
    Q_OBJECT
    Q_PROPERTY(State state READ state NOTIFY stateChanged)
    Q_PROPERTY(QString problem READ problem NOTIFY stateChanged)

public:
    enum class State {
        Idle,
        Waiting,      // hands-free: the microphone is open, and only talk::wakePhrase() is listened for
        Listening,    // the microphone is open for what may be said
        Thinking,     // it is closed; heard() comes soon
        NoMicrophone, // there is none, or the system refuses it: problem() says what to do
        Failed,       // the ear cannot be opened: problem() says why
    };
    Q_ENUM(State)

    using QObject::QObject;

    [[nodiscard]] State state() const { return state_; }
    [[nodiscard]] QString problem() const { return problem_; } // empty unless NoMicrophone or Failed

    // Held: opens the microphone; ignored while held or Thinking. The first call opens the ear too, on
    // another thread.
    virtual void start() = 0;
    // Let go: what was said since start() is heard, on another thread. Ignored unless held.
    virtual void stop() = 0;
    // Hands-free while anybody wants it: Waiting, and Listening for some seconds after the wake phrase and
    // after each sentence. Off at first.
    void wantHandsFree(const QObject* who, bool wants);
    // What is heard now is the device's own voice: no sentence begins in it.
    virtual void setDeaf(bool deaf) = 0;

signals:
    void stateChanged();
    void woken();
    void heard(const undercowl::platform::Heard& what);

protected:
    virtual void setHandsFree(bool on) = 0; // again and again the same too
    void setState(State state, const QString& problem = {});

private:
    State state_{State::Idle};
    QString problem_;
    std::set<const QObject*> wanting_; // compared only
};

} // namespace undercowl::platform
