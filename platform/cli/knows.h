// undercowlctl knows: what the shop has learned of a model.
#pragma once

#include "platform/cli/command.h"

namespace undercowl::platform {

void addKnowsCommand(CLI::App& root, Context& context);

} // namespace undercowl::platform
