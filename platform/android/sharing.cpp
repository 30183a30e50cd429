// Not built or tried yet (README.md). Files go out by the FileProvider of the manifest, which lends them for
// reading to the receiver that was picked and to no other.
#include "platform/sharing.h"

#include <QCoreApplication>
#include <QJniEnvironment>
#include <QJniObject>
#include <QtCore/qnativeinterface.h>

namespace undercowl::platform {

namespace {

constexpr const char* lender = "org/undercowl/undercowl/Lender";

QString problemOf(const QJniObject& told) {
    return told.isValid()
               ? told.toString()
               : QCoreApplication::translate("Sharing", "The system refused the files. Share them from the "
                                                        "system's file manager.");
}

QString lend(const QStringList& files, const QString& title, bool show) {
    QJniEnvironment java;
    const jobjectArray paths =
        java->NewObjectArray(static_cast<jsize>(files.size()), java.findClass("java/lang/String"), nullptr);
    for (qsizetype i = 0; i < files.size(); ++i)
        java->SetObjectArrayElement(paths, static_cast<jsize>(i), QJniObject::fromString(files[i]).object());
    const QJniObject told = QJniObject::callStaticObjectMethod(
        lender, "lend", "(Landroid/content/Context;[Ljava/lang/String;Ljava/lang/String;Z)Ljava/lang/String;",
        QNativeInterface::QAndroidApplication::context(), paths, QJniObject::fromString(title).object(),
        static_cast<jboolean>(show));
    java->DeleteLocalRef(paths);
    return problemOf(told);
}

} // namespace

bool hasShareSheet() {
    return true;
}

QString showFile(const QString& file) {
    return lend({file}, {}, true);
}

QString shareFiles(const QStringList& files, const QString& title) {
    return lend(files, title, false);
}

} // namespace undercowl::platform
