// undercowlctl verdict --measured VALUE [--low VALUE] [--high VALUE] [--uncertainty VALUE | --instrument
// NAME]
#pragma once

#include "core/verdict/judge.h"
#include "platform/cli/command.h"

#include <string>
#include <vector>

namespace undercowl::platform {

// A reading as it was typed, with its units; empty where nothing was given.
struct TypedReading {
    std::vector<std::string> measured; // at least one
    std::string low;
    std::string high;
    std::string uncertainty; // expanded, k = 2
    std::string instrument;  // by name
    std::string rule{"guard"};
};

// --low, --high, --uncertainty, --instrument of any command that takes a reading.
void addReadingOptions(CLI::App& command, TypedReading& typed);

// What becomes of it; otherwise the exit code, after the complaint. Without limits there is a value and no
// verdict.
[[nodiscard]] tl::expected<verdict::Judgement, Exit> judged(const Context& context,
                                                            const TypedReading& typed);

void addVerdictCommand(CLI::App& root, Context& context);

} // namespace undercowl::platform
