// The command "labels": a sheet of labels for the bags of a job.
#pragma once

#include "platform/cli/command.h"

namespace undercowl::platform {

void addLabelsCommand(CLI::App& root, Context& context);

} // namespace undercowl::platform
