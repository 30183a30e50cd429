#include "platform/cli/wires_command.h"

#include "platform/cli/wires.h"

#include <memory>

namespace undercowl::platform {

void addWiresCommand(CLI::App& root, Context& context) {
    const auto action = std::make_shared<std::function<int()>>();
    addWires(root, context.json, *action);
    // The subcommands' own callbacks have set the action by the time that their parent's runs.
    root.get_subcommand("wires")->callback(
        [action, &context] { context.action = [action] { return static_cast<Exit>((*action)()); }; });
}

} // namespace undercowl::platform
