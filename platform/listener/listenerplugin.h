#pragma once

#include "platform/listener/devicelistener.h"

#include <QObject>

namespace undercowl::platform {

class ListenerPlugin : public QObject, public ListenerMaker {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID "undercowl.listener")
    Q_INTERFACES(undercowl::platform::ListenerMaker)

public:
    [[nodiscard]] std::unique_ptr<Listener> microphone() const override;
};

} // namespace undercowl::platform
