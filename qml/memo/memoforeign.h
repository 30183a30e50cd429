// Lets QML name what it is handed for memos.
#pragma once

#include "platform/memo/player.h"
#include "platform/memo/recorder.h"

#include <QtQml/qqml.h>

namespace undercowl::ui {

struct RecorderForeign {
    Q_GADGET
    QML_FOREIGN(undercowl::platform::Recorder)
    QML_NAMED_ELEMENT(Recorder)
    QML_UNCREATABLE("The device hands its recorder to the app")
};

struct PlayerForeign {
    Q_GADGET
    QML_FOREIGN(undercowl::platform::Player)
    QML_NAMED_ELEMENT(Player)
    QML_UNCREATABLE("The device hands its player to the app")
};

} // namespace undercowl::ui
