// undercowlctl rounds: the lists of checks.
#pragma once

#include "platform/cli/command.h"

namespace undercowl::platform {

void addRoundsCommand(CLI::App& root, Context& context);

} // namespace undercowl::platform
