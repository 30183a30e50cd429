// What the device does with files that were made, for QML (platform/sharing.h).
#pragma once

#include <QObject>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// shares: the system has a sheet of receivers; else share() shows the folder.
class DeviceFiles : public QObject {
    Q_OBJECT
    Q_PROPERTY(bool shares READ shares CONSTANT)
    QML_ELEMENT

public:
    using QObject::QObject;

    [[nodiscard]] bool shares() const;

    // The folder is an absolute path, files are names in it. What the system does not take is told by
    // refused().
    Q_INVOKABLE void show(const QString& folder, const QString& file);
    Q_INVOKABLE void share(const QString& folder, const QStringList& files, const QString& title);

signals:
    void refused(const QString& why);
};

} // namespace undercowl::ui
