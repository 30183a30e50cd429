#include "platform/early_fonts.h"

#include <fontconfig/fontconfig.h>

namespace undercowl::platform {

EarlyFonts::EarlyFonts() : reading_([] { FcInit(); }) {}

EarlyFonts::~EarlyFonts() {
    reading_.join();
}

} // namespace undercowl::platform
