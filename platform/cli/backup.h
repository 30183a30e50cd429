// "undercowlctl backup": rolling copies and whole-shop backups; and what mends a store from them.
#pragma once

#include "platform/cli/command.h"

namespace undercowl::platform {

void addBackupCommand(CLI::App& root, Context& context);

} // namespace undercowl::platform
