// undercowlctl rounds: the lists of checks.
#pragma once

#include "core/journal/rounds.h"
#include "platform/cli/command.h"

#include <vector>

namespace undercowl::platform {

// As the shop has them. Otherwise the exit code, after the complaint.
[[nodiscard]] tl::expected<std::vector<journal::RoundList>, Exit> roundListsOf(const store::Store& store);

void addRoundsCommand(CLI::App& root, Context& context);

} // namespace undercowl::platform
