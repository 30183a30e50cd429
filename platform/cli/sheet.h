// undercowlctl sheet: machines and parts as spreadsheets, in and out.
#pragma once

#include "platform/cli/command.h"

namespace undercowl::platform {

void addSheetCommand(CLI::App& root, Context& context);

} // namespace undercowl::platform
