// A camera, as narrow as the capture screen needs it. What a device offers is behind it; tests use the one
// that takes its pictures from files.
#pragma once

#include <QImage>
#include <QObject>
#include <QString>

namespace undercowl::platform {

class Camera : public QObject {
    Q_OBJECT
    Q_PROPERTY(State state READ state NOTIFY stateChanged)
    Q_PROPERTY(QString problem READ problem NOTIFY stateChanged)

public:
    enum class State {
        Off,      // not started, or stopped
        Starting, // the device, or the one who is asked for permission, has not answered yet
        NoCamera, // there is none: take the photo from a file
        Denied,   // permission refused; start() asks again where the system allows it
        Ready,    // frames come; capture() may be called
        Busy,     // a capture is under way
        Failed,   // problem() says what and what to do
    };
    Q_ENUM(State)

    using QObject::QObject;

    [[nodiscard]] State state() const { return state_; }
    [[nodiscard]] QString problem() const { return problem_; } // empty unless Failed or Denied

    // Asks for permission if need be and opens the device. Stop releases it: call it whenever the picture is
    // not on the screen.
    virtual void start() = 0;
    virtual void stop() = 0;

    // Writes a JPEG to the file, then captured(file) or captureFailed(file, why). Precondition: Ready. The
    // folder exists and the name is free; the file is there in full before captured() is emitted.
    virtual void capture(const QString& file) = 0;

signals:
    void stateChanged();
    void frame(const QImage& picture); // for the preview only, upright, at most screen-sized
    void captured(const QString& file);
    void captureFailed(const QString& file, const QString& why);

protected:
    void setState(State state, const QString& problem = {});

private:
    State state_{State::Off};
    QString problem_;
};

} // namespace undercowl::platform
