#include "platform/camera/filecamera.h"

#include <QDir>
#include <QFile>
#include <QImageReader>

#include <utility>

namespace undercowl::platform {

namespace {

constexpr QSize previewSize{1024, 1024};

} // namespace

FileCamera::FileCamera(QString folder, QObject* parent) : Camera(parent), folder_(std::move(folder)) {}

void FileCamera::start() {
    const QDir folder(folder_);
    pictures_.clear();
    for (const auto& name :
         folder.entryList({QStringLiteral("*.jpg"), QStringLiteral("*.jpeg")}, QDir::Files, QDir::Name))
        pictures_ << folder.filePath(name);
    if (pictures_.isEmpty()) {
        setState(State::NoCamera);
        return;
    }
    setState(State::Ready);
    show();
}

void FileCamera::stop() {
    setState(State::Off);
}

void FileCamera::capture(const QString& file) {
    if (state() != State::Ready)
        return;
    setState(State::Busy);
    const QString source = pictures_[next_];
    QFile picture(source);
    if (!picture.copy(file)) {
        setState(State::Ready);
        emit captureFailed(file, tr("The picture could not be written: %1. Make room, then try again.")
                                     .arg(picture.errorString()));
        return;
    }
    QFile::setPermissions(file, QFile::ReadOwner | QFile::WriteOwner);
    next_ = (next_ + 1) % pictures_.size();
    setState(State::Ready);
    emit captured(file);
    show();
}

void FileCamera::show() {
    QImageReader reader(pictures_[next_]);
    reader.setAutoTransform(true);
    if (reader.size().isValid())
        reader.setScaledSize(reader.size().scaled(previewSize, Qt::KeepAspectRatio));
    emit frame(reader.read());
}

} // namespace undercowl::platform
