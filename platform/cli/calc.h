// undercowlctl calc list | show NAME | run NAME key=value ...
#pragma once

#include "platform/cli/command.h"

namespace undercowl::platform {

void addCalcCommand(CLI::App& root, Context& context);

} // namespace undercowl::platform
