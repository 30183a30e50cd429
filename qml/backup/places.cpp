#include "qml/backup/places.h"

#include "qml/backup/backupview.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>
#include <QStorageInfo>

#include <algorithm>

namespace undercowl::ui {

namespace {

// As Linux and Android mount them.
bool isPutIn(const QStorageInfo& volume) {
    const QString root = volume.rootPath();
    return volume.isValid() && volume.isReady() &&
           (root.startsWith(QStringLiteral("/media/")) || root.startsWith(QStringLiteral("/run/media/")) ||
            root.startsWith(QStringLiteral("/mnt/")) || root.startsWith(QStringLiteral("/storage/")));
}

} // namespace

BackupPlace thisDevice() {
    return {BackupView::tr("This device"),
            QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)};
}

std::vector<BackupPlace> backupPlaces(const QString& chosen, bool toWrite) {
    std::vector<BackupPlace> places{thisDevice()};
    for (const QStorageInfo& volume : QStorageInfo::mountedVolumes())
        if (isPutIn(volume) && !(toWrite && volume.isReadOnly()))
            places.push_back({volume.displayName(), volume.rootPath()});
    if (!chosen.isEmpty() && QFileInfo(chosen).isDir() &&
        std::ranges::find(places, chosen, &BackupPlace::folder) == places.end())
        places.push_back({QDir(chosen).dirName(), chosen});
    return places;
}

} // namespace undercowl::ui
