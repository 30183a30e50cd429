// undercowlctl job terms, charge, approve: what the bill is reckoned with, lines of it, the owner's word on
// the sum.
#pragma once

#include "platform/cli/command.h"

namespace undercowl::platform {

void addTermsCommand(CLI::App& job, Context& context);
void addChargeCommand(CLI::App& job, Context& context);
void addApproveCommand(CLI::App& job, Context& context);

} // namespace undercowl::platform
