// The device's own screen. What keeps it on is loaded when it is first wanted, not with the program.
#pragma once

#include "platform/screen/screen.h"

#include <QtPlugin>

#include <memory>

namespace undercowl::platform {

// The plugin "screen".
class ScreenMaker {
public:
    virtual ~ScreenMaker() = default;
    [[nodiscard]] virtual std::unique_ptr<Screen> systemScreen() const = 0;
};

class DeviceScreen : public Screen {
    Q_OBJECT

public:
    using Screen::Screen;

protected:
    void keep(bool awake) override; // problem() where the plugin is missing

private:
    std::unique_ptr<Screen> screen_; // null before the first wish
};

} // namespace undercowl::platform

Q_DECLARE_INTERFACE(undercowl::platform::ScreenMaker, "undercowl.screen")
