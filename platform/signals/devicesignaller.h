// The device's own tones. What plays them is loaded with the first one, not with the program.
#pragma once

#include "platform/signals/signaller.h"

#include <QtPlugin>

#include <memory>

namespace undercowl::platform {

// The plugin "signals".
class SignallerMaker {
public:
    virtual ~SignallerMaker() = default;
    [[nodiscard]] virtual std::unique_ptr<Signaller> systemSignaller() const = 0;
};

class DeviceSignaller : public Signaller {
    Q_OBJECT

public:
    using Signaller::Signaller;

    void give(Signal signal) override; // silent where the plugin is missing

private:
    std::unique_ptr<Signaller> signaller_; // null before the first signal
};

} // namespace undercowl::platform

Q_DECLARE_INTERFACE(undercowl::platform::SignallerMaker, "undercowl.signals")
