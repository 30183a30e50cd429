// The device's microphone and ear. What drives them is loaded when the button is pressed first, not with the
// program.
#pragma once

#include "platform/listener/listener.h"

#include <QtPlugin>

#include <memory>

namespace undercowl::platform {

// The plugin "listener".
class ListenerMaker {
public:
    virtual ~ListenerMaker() = default;
    [[nodiscard]] virtual std::unique_ptr<Listener> microphone() const = 0;
};

class DeviceListener : public Listener {
    Q_OBJECT

public:
    using Listener::Listener;

    void start() override; // Failed where the plugin is missing
    void stop() override;
    void setDeaf(bool deaf) override;

protected:
    void setHandsFree(bool on) override;

private:
    [[nodiscard]] bool load(); // else Failed

    std::unique_ptr<Listener> driver_; // null before the first start()
};

} // namespace undercowl::platform

Q_DECLARE_INTERFACE(undercowl::platform::ListenerMaker, "undercowl.listener")
