#include "platform/screen/screenplugin.h"

#include "systemscreen.h" // of the system that is built for

namespace undercowl::platform {

std::unique_ptr<Screen> ScreenPlugin::systemScreen() const {
    return std::make_unique<SystemScreen>();
}

} // namespace undercowl::platform
