// undercowlctl verdict --measured VALUE [--low VALUE] [--high VALUE] [--uncertainty VALUE | --instrument
// NAME]
#pragma once

#include "platform/cli/command.h"

namespace undercowl::platform {

void addVerdictCommand(CLI::App& root, Context& context);

} // namespace undercowl::platform
