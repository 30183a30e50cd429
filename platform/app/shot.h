// Pictures of screens, for reviewing the look and for the documentation.
#pragma once

#include <QQuickWindow>
#include <QString>

namespace undercowl::platform {

// Saves what `window` shows as `file` (its suffix decides the format) once pictures and fonts have had
// `settle` milliseconds to arrive, and then quits the application: exit status 0, or 2 if the file cannot be
// written.
void shootAndQuit(QQuickWindow& window, const QString& file, int settle);

} // namespace undercowl::platform
