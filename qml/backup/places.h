// Where backups are written to and looked for: this device, and the sticks, cards and shares that were put
// in.
#pragma once

#include "platform/threads/across.h"

#include <QObject>
#include <QPointer>
#include <QString>

#include <utility>
#include <vector>

namespace undercowl::ui {

// The setting of this device that holds the folder into which the last backup was to go.
inline const QString backupPlaceSetting = QStringLiteral("backup-place");

struct BackupPlace {
    QString name;
    QString folder;
};

[[nodiscard]] BackupPlace thisDevice();

// This device first; then what was put in; then 'chosen' too, where it is another folder that is there. Looks
// at disks, which may be slow or gone: not on the touch thread. What can only be read is left out where it is
// to be written.
[[nodiscard]] std::vector<BackupPlace> backupPlaces(const QString& chosen, bool toWrite);

// Runs look() beside the touch thread; then(what it found) on it, unless the view has gone by then.
void lookAtDisks(QObject* view, auto look, auto then) {
    platform::offTouch([self = QPointer(view), look = std::move(look), then = std::move(then)] {
        platform::toTouch([self, then, found = look()] {
            if (self != nullptr)
                then(found);
        });
    });
}

} // namespace undercowl::ui
