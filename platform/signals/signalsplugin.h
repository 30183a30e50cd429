#pragma once

#include "platform/signals/devicesignaller.h"

#include <QObject>

namespace undercowl::platform {

class SignalsPlugin : public QObject, public SignallerMaker {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID "undercowl.signals")
    Q_INTERFACES(undercowl::platform::SignallerMaker)

public:
    [[nodiscard]] std::unique_ptr<Signaller> systemSignaller() const override;
};

} // namespace undercowl::platform
