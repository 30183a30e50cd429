// The screen of an iPhone. Not built or tried yet (README.md).
#pragma once

#include "platform/screen/screen.h"

namespace undercowl::platform {

// The application's idle timer: needs no permission, and the system drops it with the application.
class SystemScreen : public Screen {
    Q_OBJECT

public:
    using Screen::Screen;

protected:
    void keep(bool awake) override;
};

} // namespace undercowl::platform
