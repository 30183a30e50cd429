#include "platform/camera/filecamera.h"

#include <QDir>
#include <QFile>
#include <QImageReader>
#include <QImageWriter>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <utility>

namespace undercowl::platform {

namespace {

constexpr QSize previewSize{1024, 1024};
constexpr int blurredBy = 8;  // so many pixels become one
constexpr double depth = 0.2; // of the longer side around the place in focus is sharp
constexpr double brightening = 1.5;
constexpr int quality = 95;

QImage outOfFocus(const QImage& picture) {
    const QSize small(std::max(1, picture.width() / blurredBy), std::max(1, picture.height() / blurredBy));
    return picture.scaled(small, Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
        .scaled(picture.size(), Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
}

QImage brightened(QImage picture) {
    picture.convertTo(QImage::Format_RGB888);
    for (int y = 0; y < picture.height(); ++y) {
        auto* level = picture.scanLine(y);
        for (int i = 0; i < 3 * picture.width(); ++i)
            level[i] = static_cast<uchar>(std::min(255.0, level[i] * brightening));
    }
    return picture;
}

} // namespace

FileCamera::FileCamera(QString folder, CameraAbilities abilities, QObject* parent)
    : Camera(parent), folder_(std::move(folder)), given_(abilities) {}

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
    next_ %= pictures_.size();
    setAbilities(given_);
    setState(State::Ready);
    show();
}

void FileCamera::stop() {
    focus_.reset();
    setState(State::Off);
}

void FileCamera::capture(const QString& file) {
    if (state() != State::Ready)
        return;
    setState(State::Busy);
    if (const QString why = write(file); !why.isEmpty()) {
        setState(State::Ready);
        emit captureFailed(file,
                           tr("The picture could not be written: %1. Make room, then try again.").arg(why));
        return;
    }
    QFile::setPermissions(file, QFile::ReadOwner | QFile::WriteOwner);
    next_ = (next_ + 1) % pictures_.size();
    setState(State::Ready);
    emit captured(file);
    show();
}

QString FileCamera::write(const QString& file) const {
    QFile source(pictures_[next_]);
    if (asItIs())
        return source.copy(file) ? QString() : source.errorString();
    QImageReader reader(source.fileName());
    reader.setAutoTransform(true);
    QImageWriter writer(file, "JPEG");
    writer.setQuality(quality);
    return writer.write(seen(reader.read())) ? QString() : writer.errorString();
}

bool FileCamera::asItIs() const {
    return !given_.focus && !torch() && zoom() == 1;
}

QImage FileCamera::seen(QImage picture) const {
    if (zoom() > 1) {
        const QSize shown = picture.size() / zoom();
        picture = picture.copy((picture.width() - shown.width()) / 2, (picture.height() - shown.height()) / 2,
                               shown.width(), shown.height());
    }
    if (torch())
        picture = brightened(std::move(picture));
    if (!given_.focus)
        return picture;
    QImage lens = outOfFocus(picture);
    if (focus_) {
        const double radius = depth * std::max(lens.width(), lens.height());
        QPainterPath inFocus;
        inFocus.addEllipse(QPointF(focus_->x() * lens.width(), focus_->y() * lens.height()), radius, radius);
        QPainter painter(&lens);
        painter.setClipPath(inFocus);
        painter.drawImage(0, 0, picture);
    }
    return lens;
}

void FileCamera::aimFocus(QPointF at) {
    focus_ = at;
    show();
}

void FileCamera::switchTorch(bool /*on*/) {
    show();
}

void FileCamera::moveZoom(double /*factor*/) {
    show();
}

void FileCamera::show() {
    QImageReader reader(pictures_[next_]);
    reader.setAutoTransform(true);
    if (reader.size().isValid())
        reader.setScaledSize(reader.size().scaled(previewSize, Qt::KeepAspectRatio));
    emit frame(seen(reader.read()));
}

} // namespace undercowl::platform
