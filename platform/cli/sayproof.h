// undercowlctl job prove: what the job disturbed is proved, by looking or by a reading, or left out for a
// reason.
#pragma once

#include "platform/cli/command.h"

namespace undercowl::platform {

void addProveCommand(CLI::App& job, Context& context);

} // namespace undercowl::platform
