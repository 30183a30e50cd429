// undercowlctl instrument list|keep|retire: the shop's measuring instruments, kept in its store.
#pragma once

#include "core/journal/instruments.h"
#include "platform/cli/command.h"

#include <vector>

namespace undercowl::platform {

void addInstrumentCommand(CLI::App& root, Context& context);

// All that the store holds, the retired as well. The error has been complained about already.
[[nodiscard]] tl::expected<std::vector<journal::KeptInstrument>, Exit>
instrumentsOf(const store::Store& store);

} // namespace undercowl::platform
