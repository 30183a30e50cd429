#include "qml/handover/devicefiles.h"

#include "platform/sharing.h"

#include <QDir>

namespace undercowl::ui {

bool DeviceFiles::shares() const {
    return platform::hasShareSheet();
}

void DeviceFiles::show(const QString& folder, const QString& file) {
    if (const QString problem = platform::showFile(QDir(folder).filePath(file)); !problem.isEmpty())
        emit refused(problem);
}

void DeviceFiles::share(const QString& folder, const QStringList& files, const QString& title) {
    if (files.isEmpty())
        return;
    QStringList paths;
    for (const QString& file : files)
        paths.push_back(QDir(folder).filePath(file));
    if (const QString problem = platform::shareFiles(paths, title); !problem.isEmpty())
        emit refused(problem);
}

} // namespace undercowl::ui
