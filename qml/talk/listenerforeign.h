// Lets QML name the type of the listener that it is handed.
#pragma once

#include "platform/listener/listener.h"

#include <QtQml/qqml.h>

namespace undercowl::ui {

struct ListenerForeign {
    Q_GADGET
    QML_FOREIGN(undercowl::platform::Listener)
    QML_NAMED_ELEMENT(Listener)
    QML_UNCREATABLE("The device hands its listener to the app")
};

} // namespace undercowl::ui
