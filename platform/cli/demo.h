// The command "demo": the main job in the terminal, on the demo shop.
#pragma once

#include "platform/cli/command.h"

namespace undercowl::platform {

void addDemoCommand(CLI::App& root, Context& context);

} // namespace undercowl::platform
