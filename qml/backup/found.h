// What is found to go on with: backups in the places, and the other shops of this device. Looked at on the
// disks, so not for the touch thread.
#pragma once

#include "core/job/model.h"
#include "qml/backup/places.h"
#include "qml/shell/linemodel.h"

#include <QString>

#include <filesystem>
#include <vector>

namespace undercowl::ui {

inline const QString sealedMark = QStringLiteral("sealed");
inline const QString wrongMark = QStringLiteral("wrong"); // it cannot be read

struct FoundBackup {
    job::TimeMs at{}; // it was made
    Line line;        // as in RestoreView's 'backups'
};

[[nodiscard]] FoundBackup lookAtBackup(const QString& file, const QString& place);

// Of all places, the newest first.
[[nodiscard]] std::vector<Line> backupsIn(const std::vector<BackupPlace>& places);

// The shops of HOME but the present one, as in RestoreView's 'earlier'.
[[nodiscard]] std::vector<Line> shopsOf(const std::filesystem::path& home,
                                        const std::filesystem::path& present);

[[nodiscard]] std::filesystem::path pathOf(const QString& name);
[[nodiscard]] QString folderName(const std::filesystem::path& folder);
[[nodiscard]] QString moment(job::TimeMs at); // day, hour and minute

} // namespace undercowl::ui
