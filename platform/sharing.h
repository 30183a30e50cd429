// What the device does with files that were made: shown by the program that the system has for them, or given
// to whoever the mechanic picks from the system's sheet of receivers. Nothing is sent by this program itself.
#pragma once

#include <QString>
#include <QStringList>

namespace undercowl::platform {

// Whether share() brings up a sheet of receivers. Where there is none, files can only be shown.
[[nodiscard]] bool hasShareSheet();

// Both return at once, on the touch thread; empty when the system took the files, else what is wrong and what
// to do. file: absolute path of a file or a folder
[[nodiscard]] QString showFile(const QString& file);
// files: absolute paths of files, at least one
[[nodiscard]] QString shareFiles(const QStringList& files, const QString& title);

} // namespace undercowl::platform
