// The command "handover": the owner's record of a job as PDF and HTML.
#pragma once

#include "platform/cli/command.h"

namespace undercowl::platform {

void addHandoverCommand(CLI::App& root, Context& context);

} // namespace undercowl::platform
