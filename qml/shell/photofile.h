// A picture on disk, on its way into the store.
#pragma once

#include "qml/shell/session.h"

#include <QByteArray>
#include <QString>

#include <cstddef>
#include <span>
#include <string>

namespace undercowl::ui {

struct PhotoFile {
    QByteArray bytes;   // as they are: the original is never altered
    std::string suffix; // "jpg" or "png", by content
    int width{};        // of the upright picture, pixels
    int height{};
    job::TimeMs takenAt{}; // when the file was last written
};

// Reads the file and the head of its picture. NotFound when it is gone; Refused when it is neither JPEG nor
// PNG, damaged in its head, or larger than 200 MiB.
//
// Where it was taken is left out of what is kept, unless it is wished; the file itself stays as it is.
[[nodiscard]] store::Result<PhotoFile> readPhotoFile(const QString& path, bool keepLocation = false);

[[nodiscard]] std::span<const std::byte> bytesOf(const PhotoFile& file);

// What is said of it once its content is in the store under the media name.
[[nodiscard]] job::Photo describe(const PhotoFile& file, const PhotoToKeep& wanted, const Id& id,
                                  const std::string& media);

} // namespace undercowl::ui
