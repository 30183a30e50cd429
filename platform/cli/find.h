// The command "find": words in everything the shop has noted.
#pragma once

#include "platform/cli/command.h"

namespace undercowl::platform {

void addFindCommand(CLI::App& root, Context& context);

} // namespace undercowl::platform
