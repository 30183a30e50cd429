// The command "wires" as undercowlctl offers it.
#pragma once

#include "platform/cli/command.h"

namespace undercowl::platform {

void addWiresCommand(CLI::App& root, Context& context);

} // namespace undercowl::platform
