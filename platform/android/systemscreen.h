// The screen of an Android phone. Not built and not tried: no Android kit was at hand.
#pragma once

#include "platform/screen/screen.h"

namespace undercowl::platform {

// The window's flag FLAG_KEEP_SCREEN_ON: needs no permission, and the system drops it with the window.
class SystemScreen : public Screen {
    Q_OBJECT

public:
    using Screen::Screen;

protected:
    void keep(bool awake) override;
};

} // namespace undercowl::platform
