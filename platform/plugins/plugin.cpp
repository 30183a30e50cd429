#include "platform/plugins/plugin.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QJsonObject>
#include <QPluginLoader>

namespace undercowl::platform {

namespace {

QString fileOf(const QString& name) {
    const QString file = QStringLiteral("libundercowl_%1.so").arg(name);
    const QDir program(QCoreApplication::applicationDirPath());
    // Installed, then as built.
    for (const QString& folder :
         {program.filePath(QStringLiteral("../lib/undercowl")), QStringLiteral(UNDERCOWL_PLUGINS)}) {
        if (QFileInfo::exists(QDir(folder).filePath(file)))
            return QDir(folder).filePath(file);
    }
    return {};
}

QObject* linkedIn(const QString& name) {
    for (const QStaticPlugin& one : QPluginLoader::staticPlugins()) {
        if (one.metaData().value(QStringLiteral("IID")).toString() ==
            QStringLiteral("undercowl.%1").arg(name))
            return one.instance();
    }
    return nullptr;
}

} // namespace

QObject* plugin(const QString& name, QString& problem) {
    if (QObject* object = linkedIn(name); object != nullptr)
        return object;
    const QString file = fileOf(name);
    QPluginLoader loader(file); // its end unloads nothing
    if (QObject* object = file.isEmpty() ? nullptr : loader.instance(); object != nullptr)
        return object;
    problem = QCoreApplication::translate(
                  "Plugin", "A part of this program is missing or damaged (%1). Install it again; "
                            "what is kept in the shop stays as it is.")
                  .arg(file.isEmpty() ? QStringLiteral("undercowl_%1").arg(name) : loader.errorString());
    return nullptr;
}

void warmPlugin(const QString& name) {
    const QString file = fileOf(name);
    if (!file.isEmpty())
        QPluginLoader(file).load();
}

} // namespace undercowl::platform
