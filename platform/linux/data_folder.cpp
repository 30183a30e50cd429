// By the XDG base directory specification, version 0.8.
#include "platform/data_folder.h"

#include <cstdlib>

namespace undercowl::platform {

std::filesystem::path dataFolder() {
    // "All paths set in these environment variables must be absolute": a relative one is ignored.
    if (const char* data = std::getenv("XDG_DATA_HOME")) {
        if (const std::filesystem::path folder = data; folder.is_absolute()) {
            return folder / "undercowl";
        }
    }
    if (const char* home = std::getenv("HOME")) {
        if (const std::filesystem::path folder = home; folder.is_absolute()) {
            return folder / ".local" / "share" / "undercowl";
        }
    }
    return {};
}

} // namespace undercowl::platform
