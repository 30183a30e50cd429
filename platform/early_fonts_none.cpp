// Where the system's fonts are not listed by fontconfig there is nothing to begin early.
#include "platform/early_fonts.h"

namespace undercowl::platform {

EarlyFonts::EarlyFonts() = default;
EarlyFonts::~EarlyFonts() = default;
void EarlyFonts::wait() {}

} // namespace undercowl::platform
