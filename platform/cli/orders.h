// undercowlctl orders: everything that is to be ordered.
#pragma once

#include "platform/cli/command.h"

namespace undercowl::platform {

void addOrdersCommand(CLI::App& root, Context& context);

} // namespace undercowl::platform
