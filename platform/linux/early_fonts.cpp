#include "platform/early_fonts.h"

#include <fontconfig/fontconfig.h>

namespace undercowl::platform {

EarlyFonts::EarlyFonts() : reading_([] { FcInit(); }) {}

EarlyFonts::~EarlyFonts() {
    wait();
}

void EarlyFonts::wait() {
    if (reading_.joinable())
        reading_.join();
}

} // namespace undercowl::platform
