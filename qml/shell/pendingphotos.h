// Photos on their way from the camera into the store.
//
// The file's name is reserved before the shutter and says what the photo is about, so that a photo survives
// the end of the program between shutter and store: the next start keeps it. The files lie beside the store's
// folder, never in it. Of the pictures of one touch (qml/shell/burst.h) one is kept, here as well.
#pragma once

#include "qml/shell/session.h"

#include <QString>

#include <functional>
#include <optional>

namespace undercowl::ui {

// The folder for this store, "FOLDER-taken"; made when it is missing. Empty when that fails.
[[nodiscard]] QString takenFolder(const ShopSession& session);

// A new file name in that folder: JOB_PURPOSE_ABOUT_ID.jpg.
[[nodiscard]] QString takenName(const QString& folder, const PhotoToKeep& photo, const Id& unique);

// What the name says; nothing when it is none of ours.
[[nodiscard]] std::optional<PhotoToKeep> photoOfTakenName(const QString& file);

// Keeps every photo that a former run took and did not keep. A photo that the store has already is only
// tidied away; a file that is no whole picture stays and is passed over. Of a burst the sharpest whole
// picture is kept and the others go. 'then' gets how many were kept.
void rescueTakenPhotos(ShopSession& session, std::function<void(int)> then = {});

} // namespace undercowl::ui
