#include "qml/handover/devicefiles.h"

#include "platform/sharing.h"

namespace undercowl::ui {

bool DeviceFiles::shares() const {
    return platform::hasShareSheet();
}

void DeviceFiles::show(const QString& file) {
    if (const QString problem = platform::showFile(file); !problem.isEmpty())
        emit refused(problem);
}

void DeviceFiles::share(const QStringList& files, const QString& title) {
    if (files.isEmpty())
        return;
    if (const QString problem = platform::shareFiles(files, title); !problem.isEmpty())
        emit refused(problem);
}

} // namespace undercowl::ui
