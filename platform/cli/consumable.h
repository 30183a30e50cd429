// undercowlctl consumable: may this fluid go into the machine?
#pragma once

#include "platform/cli/command.h"

namespace undercowl::platform {

void addConsumableCommand(CLI::App& root, Context& context);

} // namespace undercowl::platform
