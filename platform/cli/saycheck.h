// undercowlctl job round, check: a round is begun, and its checks are ticked.
#pragma once

#include "platform/cli/command.h"

namespace undercowl::platform {

void addRoundCommand(CLI::App& job, Context& context);
void addCheckCommand(CLI::App& job, Context& context);

} // namespace undercowl::platform
