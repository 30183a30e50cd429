// Recording a memo, as narrow as its screen needs it. What a device offers is behind it; tests hand the sound
// over themselves.
#pragma once

#include <QObject>
#include <QString>

namespace undercowl::platform {

class Recorder : public QObject {
    Q_OBJECT
    Q_PROPERTY(State state READ state NOTIFY stateChanged)
    Q_PROPERTY(QString problem READ problem NOTIFY stateChanged)
    Q_PROPERTY(double level READ level NOTIFY heard)
    Q_PROPERTY(int milliseconds READ milliseconds NOTIFY heard)

public:
    enum class State {
        Idle,
        Recording,
        NoMicrophone, // there is none, or the system refuses it: problem() says what to do
        Failed,       // the file cannot be written: problem() says why
    };
    Q_ENUM(State)

    using QObject::QObject;

    [[nodiscard]] State state() const { return state_; }
    [[nodiscard]] QString problem() const { return problem_; } // empty unless NoMicrophone or Failed
    [[nodiscard]] double level() const { return level_; }      // of the last stretch; see level.h
    [[nodiscard]] int milliseconds() const { return milliseconds_; }

    // Records into the file until stop(): WAV, 16 bit, one channel, memoRate. The folder exists and the name
    // is free. What was said is on the disk within a second, so that a cut loses no more. Ignored while
    // Recording.
    virtual void start(const QString& file) = 0;
    // Ignored unless Recording.
    virtual void stop() = 0;

signals:
    void stateChanged();
    void heard();                       // level and milliseconds, ten times a second
    void finished(const QString& file); // it ended, by stop() or by a fault; what was said is in the file

protected:
    void setState(State state, const QString& problem = {});
    void tell(double level, int milliseconds);

private:
    State state_{State::Idle};
    QString problem_;
    double level_{};
    int milliseconds_{};
};

} // namespace undercowl::platform
