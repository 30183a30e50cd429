// A camera, as narrow as the capture screen needs it. What a device offers is behind it; tests use the one
// that takes its pictures from files.
#pragma once

#include <QImage>
#include <QObject>
#include <QPointF>
#include <QString>

namespace undercowl::platform {

// What a device can do besides taking pictures. Known once the camera is Ready; a camera that says nothing
// can do nothing of it.
struct CameraAbilities {
    bool focus{};       // on a place of the picture
    bool torch{};       // a lamp that stays on
    double mostZoom{1}; // 1: no zoom
    int burst{1};       // so many pictures of one view may be taken in quick succession

    bool operator==(const CameraAbilities&) const = default;
};

class Camera : public QObject {
    Q_OBJECT
    Q_PROPERTY(State state READ state NOTIFY stateChanged)
    Q_PROPERTY(QString problem READ problem NOTIFY stateChanged)
    Q_PROPERTY(bool canFocus READ canFocus NOTIFY abilitiesChanged)
    Q_PROPERTY(bool canLight READ canLight NOTIFY abilitiesChanged)
    Q_PROPERTY(double mostZoom READ mostZoom NOTIFY abilitiesChanged)
    Q_PROPERTY(bool torch READ torch NOTIFY torchChanged)
    Q_PROPERTY(double zoom READ zoom NOTIFY zoomChanged)

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

    [[nodiscard]] const CameraAbilities& abilities() const { return abilities_; }
    [[nodiscard]] bool canFocus() const { return abilities_.focus; }
    [[nodiscard]] bool canLight() const { return abilities_.torch; }
    [[nodiscard]] double mostZoom() const { return abilities_.mostZoom; }
    [[nodiscard]] bool torch() const { return torch_; } // on
    [[nodiscard]] double zoom() const {
        return zoom_;
    } // 1 or more: the picture shows so much less of the view

    // Asks for permission if need be and opens the device. Stop releases it: call it whenever the picture is
    // not on the screen. Torch and zoom are then as at the beginning: off, and 1.
    virtual void start() = 0;
    virtual void stop() = 0;

    // Writes a JPEG to the file, then captured(file) or captureFailed(file, why). Precondition: Ready. The
    // folder exists and the name is free; the file is there in full before captured() is emitted.
    virtual void capture(const QString& file) = 0;

    // Each does nothing where the device cannot, or the camera is not started. 'at' is in parts of the
    // picture that frame() shows, from its top left corner; kept within it. The factor is kept within 1 to
    // mostZoom().
    Q_INVOKABLE void focusAt(QPointF at);
    Q_INVOKABLE void setTorch(bool on);
    Q_INVOKABLE void setZoom(double factor);

signals:
    void stateChanged();
    void abilitiesChanged();
    void torchChanged();
    void zoomChanged();
    void frame(const QImage& picture); // for the preview only, upright, at most screen-sized
    void captured(const QString& file);
    void captureFailed(const QString& file, const QString& why);

protected:
    void setState(State state,
                  const QString& problem = {}); // Off, NoCamera, Denied, Failed: torch and zoom go back
    void setAbilities(const CameraAbilities& abilities);

    // What the device does; called with values that it can do.
    virtual void aimFocus(QPointF at);
    virtual void switchTorch(bool on);
    virtual void moveZoom(double factor);

private:
    [[nodiscard]] bool started() const;

    State state_{State::Off};
    QString problem_;
    CameraAbilities abilities_;
    bool torch_{};
    double zoom_{1};
};

} // namespace undercowl::platform
