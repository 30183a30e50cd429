// What is said while a picture is aimed, before the shutter: hold still, out of focus, no white in view; and
// how far the device is tilted. It says, and never holds up the shutter.
#pragma once

#include "core/sight/preview.h"
#include "platform/camera/camera.h"
#include "platform/level/level.h"

#include <QElapsedTimer>
#include <QObject>
#include <QPointer>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include <memory>
#include <optional>

namespace undercowl::ui {

// active: the camera's picture is on the screen. wires: the photo is to be read for the colours of wires.
// Frames are judged off the touch thread, one at a time and a few each second.
class CameraHints : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(undercowl::platform::Camera* camera READ camera WRITE setCamera NOTIFY cameraChanged REQUIRED)
    Q_PROPERTY(undercowl::platform::Level* level READ level WRITE setLevel NOTIFY levelChanged)
    Q_PROPERTY(bool active READ active WRITE setActive NOTIFY activeChanged)
    Q_PROPERTY(bool wires MEMBER wires_)
    Q_PROPERTY(Hint hint READ hint NOTIFY hintChanged)
    Q_PROPERTY(QString words READ words NOTIFY hintChanged)

public:
    enum class Hint {
        None,
        HoldStill,
        OutOfFocus,
        NoWhite, // of wires alone
    };
    Q_ENUM(Hint)

    explicit CameraHints(QObject* parent = nullptr);
    ~CameraHints() override;

    [[nodiscard]] platform::Camera* camera() const { return camera_; }
    void setCamera(platform::Camera* camera);
    [[nodiscard]] platform::Level* level() const { return level_; }
    void setLevel(platform::Level* level);
    [[nodiscard]] bool active() const { return active_; }
    void setActive(bool active);
    [[nodiscard]] Hint hint() const { return hint_; } // has held for a moment, so that it can be read
    [[nodiscard]] QString words() const;              // empty for None

signals:
    void cameraChanged();
    void levelChanged();
    void activeChanged();
    void hintChanged();

private:
    struct Look { // what one frame showed
        sight::Grey small;
        double moved{}; // parts of the width in a second
        std::optional<double> sharpness;
        bool white{};
    };
    void look(const QImage& picture);
    void judge(const std::shared_ptr<const Look>& look);
    void show(Hint hint);
    void forget();

    QPointer<platform::Camera> camera_;
    QPointer<platform::Level> level_;
    bool active_{};
    bool wires_{};
    bool looking_{};
    int run_{};                          // what an earlier aiming still says comes too late
    QElapsedTimer sinceLook_;            // not valid before the first one
    std::shared_ptr<const Look> before_; // null before the first one
    Hint hint_{Hint::None};
    Hint next_{Hint::None}; // shown once it has held for a while
    QTimer hold_;
};

} // namespace undercowl::ui
