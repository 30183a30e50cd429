// A copy of the database beside it, once a day, made in the background while the app runs.
#pragma once

#include "qml/shell/session.h"

namespace undercowl::ui {

// Looks some time after the shop was opened, and then every hour, whether a copy is due. A copy that fails is
// told; the work goes on. Call once; ends with the session.
void keepRollingCopies(ShopSession& session, int firstAfterMs = 20'000);

} // namespace undercowl::ui
