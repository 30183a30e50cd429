// Not built or tried yet (README.md).
#include "platform/data_folder.h"

#include <QJniObject>
#include <QtCore/qnativeinterface.h>

namespace undercowl::platform {

// The app's own files, which no other app reads. Before QCoreApplication there is a context already.
std::filesystem::path dataFolder() {
    const QJniObject context = QNativeInterface::QAndroidApplication::context();
    const QJniObject folder = context.callObjectMethod("getFilesDir", "()Ljava/io/File;");
    if (!folder.isValid())
        return {};
    return std::filesystem::path(
               folder.callObjectMethod("getAbsolutePath", "()Ljava/lang/String;").toString().toStdString()) /
           "undercowl";
}

} // namespace undercowl::platform
