// The commands "archive export", "archive import" and "archive verify".
#pragma once

#include "platform/cli/command.h"

namespace undercowl::platform {

void addArchiveCommand(CLI::App& root, Context& context);

} // namespace undercowl::platform
