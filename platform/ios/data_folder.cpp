// Not built or tried yet (README.md).
#include "platform/data_folder.h"

#include <cstdlib>

namespace undercowl::platform {

// HOME is the app's own place; "Application Support" is where Apple wants what the user does not handle
// himself. It is part of the device's own backup.
std::filesystem::path dataFolder() {
    const char* home = std::getenv("HOME");
    return home == nullptr ? std::filesystem::path()
                           : std::filesystem::path(home) / "Library" / "Application Support" / "undercowl";
}

} // namespace undercowl::platform
