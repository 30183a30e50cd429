#include "qml/shell/photofile.h"

#include "core/sight/metadata.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QDateTime>
#include <QFile>
#include <QFileInfo>
#include <QImageReader>

namespace undercowl::ui {

namespace {

constexpr qint64 mostBytes = qint64{200} * 1024 * 1024;

tl::unexpected<store::Problem> problem(store::Fault fault, const char* what, const QString& path) {
    const QString message = QCoreApplication::translate("Words", what).arg(QFileInfo(path).fileName());
    return tl::unexpected(store::Problem{fault, message.toStdString()});
}

} // namespace

store::Result<PhotoFile> readPhotoFile(const QString& path, bool keepLocation) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return problem(store::Fault::NotFound,
                       QT_TRANSLATE_NOOP("Words", "The picture %1 cannot be read: it is gone, or reading it "
                                                  "is not allowed. Choose another one."),
                       path);
    if (file.size() > mostBytes)
        return problem(
            store::Fault::Refused,
            QT_TRANSLATE_NOOP("Words", "The picture %1 is larger than 200 MiB. Choose a smaller one."), path);
    PhotoFile photo;
    photo.bytes = file.readAll();
    if (!keepLocation) {
        if (const auto without = sight::withoutLocation(bytesOf(photo)))
            photo.bytes = QByteArray(reinterpret_cast<const char*>(without->data()),
                                     static_cast<qsizetype>(without->size()));
    }
    photo.takenAt = QFileInfo(file).lastModified().toMSecsSinceEpoch();
    QBuffer buffer(&photo.bytes);
    QImageReader head(&buffer);
    const QByteArray format = head.format();
    const QSize size = head.size();
    if ((format != "jpeg" && format != "png") || !size.isValid())
        return problem(store::Fault::Refused,
                       QT_TRANSLATE_NOOP(
                           "Words", "%1 is not a JPEG or PNG picture, or it is damaged. Choose another one."),
                       path);
    photo.suffix = format == "png" ? "png" : "jpg";
    const bool onItsSide = head.transformation().testFlag(QImageIOHandler::TransformationRotate90);
    photo.width = onItsSide ? size.height() : size.width();
    photo.height = onItsSide ? size.width() : size.height();
    return photo;
}

std::span<const std::byte> bytesOf(const PhotoFile& file) {
    return std::as_bytes(std::span(file.bytes.constData(), static_cast<std::size_t>(file.bytes.size())));
}

job::Photo describe(const PhotoFile& file, const PhotoToKeep& wanted, const Id& id,
                    const std::string& media) {
    job::Photo photo;
    photo.id = id;
    photo.media = media;
    photo.purpose = wanted.purpose;
    photo.about = wanted.about;
    photo.note = wanted.note.trimmed().toStdString();
    photo.width = file.width;
    photo.height = file.height;
    photo.takenAt = file.takenAt;
    return photo;
}

} // namespace undercowl::ui
