// The commands "store check" and "store rebuild".
#pragma once

#include "platform/cli/command.h"

namespace undercowl::platform {

void addStoreCommand(CLI::App& root, Context& context);

} // namespace undercowl::platform
