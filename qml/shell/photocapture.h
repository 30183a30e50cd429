// Taking photos for the open job: from the camera, or from pictures on the device where there is none.
#pragma once

#include "qml/shell/cameraholder.h"
#include "qml/shell/linemodel.h"

#include <QElapsedTimer>
#include <QStringList>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace undercowl::ui {

// purpose: code of job::PhotoPurpose. about: finding, step or gathering, may be empty. note: kept with each
// photo.
// Where the device is quick enough, one touch takes up to three pictures, and the sharpest is kept: the first
// is on the disk before the second is asked for, and no cut in between loses it (qml/shell/pendingphotos.h).
// taken: photos kept since the screen was opened, newest first: id, title, picture; for one look and for
// undo.
class PhotoCapture : public undercowl::ui::CameraHolder {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString jobId MEMBER jobId_ REQUIRED)
    Q_PROPERTY(QString purpose MEMBER purpose_ REQUIRED)
    Q_PROPERTY(QString about MEMBER about_)
    Q_PROPERTY(QString note MEMBER note_)
    Q_PROPERTY(bool ready READ ready NOTIFY stateChanged)
    Q_PROPERTY(bool busy READ busy NOTIFY stateChanged)
    Q_PROPERTY(QString stateWords READ stateWords NOTIFY stateChanged)
    Q_PROPERTY(undercowl::ui::LineModel* taken READ taken CONSTANT)

public:
    explicit PhotoCapture(QObject* parent = nullptr);
    ~PhotoCapture() override; // what was taken is kept

    void componentComplete() override;

    [[nodiscard]] bool ready() const;                     // the shutter may be pressed
    [[nodiscard]] bool busy() const { return busy_ > 0; } // a photo is being taken or kept
    [[nodiscard]] QString stateWords() const; // what keeps the camera from being ready; else empty
    [[nodiscard]] LineModel* taken() { return &taken_; }

    Q_INVOKABLE void shoot();
    Q_INVOKABLE void keepFile(const QString& file); // a picture that is on the device already; it stays there

signals:
    void kept(const QString& photoId); // saved: the sync has returned

protected:
    void hookUp(platform::Camera& camera) override;

private:
    void take(); // the next picture of this touch
    void took(const QString& file);
    void endTouch(); // keeps the sharpest of those that were taken
    void keep(const QString& file, bool ours);
    void showTaken(); // without those that were undone
    [[nodiscard]] PhotoToKeep wanted(const QString& file, bool ours) const;

    QString jobId_, purpose_, about_, note_;
    int busy_{};
    QString asked_;     // the file being captured: another page's is not ours, and has another subject
    QString first_;     // the file of this touch's first picture
    QStringList shots_; // of this touch, so far
    QElapsedTimer sinceTouch_, sinceAsked_;
    bool another_{};          // is to be taken as soon as the camera is ready again
    QTimer enough_;           // the camera does not get ready: what was taken is kept
    std::vector<Line> lines_; // of all that were kept here
    LineModel taken_;
};

} // namespace undercowl::ui
