// A camera whose pictures are the JPEG files of a folder, in order of name, over and over. For tests and for
// trying the capture screen where there is no camera.
#pragma once

#include "platform/camera/camera.h"

#include <QStringList>

namespace undercowl::platform {

class FileCamera : public Camera {
    Q_OBJECT

public:
    explicit FileCamera(QString folder, QObject* parent = nullptr);

    void start() override; // NoCamera when the folder holds no JPEG
    void stop() override;
    void capture(const QString& file) override; // copies the picture that is shown, then shows the next one

private:
    void show();

    QString folder_;
    QStringList pictures_;
    qsizetype next_{};
};

} // namespace undercowl::platform
