// A camera whose pictures are the JPEG files of a folder, in order of name, over and over. For tests and for
// trying the capture screen where there is no camera. It may be given abilities, and then shows what they do.
#pragma once

#include "platform/camera/camera.h"

#include <QStringList>

#include <optional>

namespace undercowl::platform {

class FileCamera : public Camera {
    Q_OBJECT

public:
    // abilities.focus: all is out of focus until focusAt(), and then but for what lies around that place.
    // .torch: brightens. .mostZoom: cuts the middle out. .burst: so many files are pictures of one view.
    explicit FileCamera(QString folder, CameraAbilities abilities = {}, QObject* parent = nullptr);

    void start() override; // NoCamera when the folder holds no JPEG
    void stop() override;
    // Keeps the picture that is shown, then shows the next one. The file is copied as it is where no ability
    // changes it.
    void capture(const QString& file) override;

protected:
    void aimFocus(QPointF at) override;
    void switchTorch(bool on) override;
    void moveZoom(double factor) override;

private:
    void show();
    [[nodiscard]] QString write(const QString& file) const; // why it failed, in words; empty: it is there
    [[nodiscard]] bool asItIs() const;
    [[nodiscard]] QImage seen(QImage picture) const;

    QString folder_;
    CameraAbilities given_;
    QStringList pictures_;
    qsizetype next_{};
    std::optional<QPointF> focus_; // in parts of what is shown
};

} // namespace undercowl::platform
