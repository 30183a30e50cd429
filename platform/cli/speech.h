// The commands "speech hear" and "speech say": the ear and the voice, for files.
#pragma once

#include "platform/cli/command.h"

namespace undercowl::platform {

void addSpeechCommand(CLI::App& root, Context& context);

} // namespace undercowl::platform
