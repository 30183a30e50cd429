#include "platform/sharing.h"

#include <QCoreApplication>
#include <QDesktopServices>
#include <QFileInfo>
#include <QUrl>

namespace undercowl::platform {

// The desktops of Debian 12 have no sheet of receivers that a program may ask for.
bool hasShareSheet() {
    return false;
}

QString showFile(const QString& file) {
    const QFileInfo there(file);
    if (!there.exists())
        return QCoreApplication::translate("Sharing", "%1 is not there any more. Make it again.").arg(file);
    if (QDesktopServices::openUrl(QUrl::fromLocalFile(file)))
        return {};
    return QCoreApplication::translate("Sharing", "This device has no program for %1. The file lies in %2.")
        .arg(there.fileName(), there.absolutePath());
}

QString shareFiles(const QStringList& files, const QString& /*title*/) {
    return showFile(QFileInfo(files.front()).absolutePath());
}

} // namespace undercowl::platform
