#include "qml/shell/picturefolder.h"

#include "platform/threads/across.h"
#include "qml/shell/words.h"

#include <QDateTime>
#include <QDir>
#include <QLocale>
#include <QPointer>
#include <QStandardPaths>

namespace undercowl::ui {

namespace {

constexpr std::size_t mostEntries = 500;

std::pair<std::vector<Line>, bool> list(const QString& path, const QStringList& names) {
    std::vector<Line> lines;
    const QDir folder(path);
    const auto now = QDateTime::currentMSecsSinceEpoch();
    for (const auto& info :
         folder.entryInfoList(QDir::Dirs | QDir::NoDotAndDotDot | QDir::Readable, QDir::Name))
        lines.push_back({.id = info.filePath(), .title = info.fileName(), .mark = QStringLiteral("folder")});
    const QStringList pictures{QStringLiteral("*.jpg"), QStringLiteral("*.jpeg"), QStringLiteral("*.png")};
    const bool any = !names.isEmpty();
    for (const auto& info :
         folder.entryInfoList(any ? names : pictures, QDir::Files | QDir::Readable, QDir::Time)) {
        if (lines.size() == mostEntries)
            return {std::move(lines), true};
        lines.push_back({.id = info.filePath(),
                         .title = info.fileName(),
                         .detail = any ? QLocale().formattedDataSize(info.size()) : QString(),
                         .aside = when(info.lastModified().toMSecsSinceEpoch(), now),
                         .mark = any ? QStringLiteral("file") : QStringLiteral("picture"),
                         .picture = any ? QUrl() : QUrl::fromLocalFile(info.filePath())});
    }
    return {std::move(lines), false};
}

} // namespace

void PictureFolder::setFolder(const QString& folder) {
    QString wanted =
        !folder.isEmpty()
            ? folder
            : QStandardPaths::writableLocation(names_.isEmpty() ? QStandardPaths::PicturesLocation
                                                                : QStandardPaths::DocumentsLocation);
    if (!QDir(wanted).exists())
        wanted = QDir::homePath();
    wanted = QDir(wanted).absolutePath();
    if (wanted == folder_)
        return;
    folder_ = wanted;
    busy_ = true;
    emit folderChanged();
    emit listed();
    // Memory cards are slow: never on the touch thread. The answer comes by way of the application, which
    // alone may ask whether this object still lives.
    platform::offTouch([folder = folder_, names = names_, number = ++wanted_, self = QPointer(this)] {
        auto result = list(folder, names);
        platform::toTouch([result = std::move(result), number, self] {
            if (self == nullptr || self->wanted_ != number)
                return;
            self->entries_.setLines(result.first);
            self->more_ = result.second;
            self->busy_ = false;
            emit self->listed();
        });
    });
}

QString PictureFolder::name() const {
    const QString name = QDir(folder_).dirName();
    return name.isEmpty() ? folder_ : name;
}

bool PictureFolder::hasParent() const {
    return !QDir(folder_).isRoot();
}

void PictureFolder::up() {
    QDir folder(folder_);
    if (folder.cdUp())
        setFolder(folder.absolutePath());
}

} // namespace undercowl::ui
