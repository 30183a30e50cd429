// The command "wires": reads wire colours in photos. Needs no Qt.
#pragma once

#include <CLI/CLI.hpp>

#include <functional>

namespace undercowl::platform {

// Adds "wires tap|sweep|propose|compare" to a command line. When one of them is called, its callback sets the
// action, which answers 0 (done), 1 (a change was found, or no wire) or 2 (unreadable input). Whether to
// answer in JSON is read when the action runs; the flag must outlive it.
void addWires(CLI::App& app, const bool& asJson, std::function<int()>& action);

} // namespace undercowl::platform
