// The command "job": the list of jobs, one job, what is next on it.
#pragma once

#include "platform/cli/command.h"

namespace undercowl::platform {

void addJobCommand(CLI::App& root, Context& context);

} // namespace undercowl::platform
