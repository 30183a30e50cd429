// The wires command alone, without Qt: for scoring the reader where the whole command line is not built.
#include "platform/cli/wires.h"

#include <CLI/CLI.hpp>

int main(int argc, char** argv) {
    CLI::App app{"Reads wire colours in photos"};
    app.require_subcommand(1);
    app.fallthrough();
    bool json = false;
    app.add_flag("--json", json, "Answer in JSON");
    std::function<int()> action;
    undercowl::platform::addWires(app, json, action);
    try {
        app.parse(argc, argv);
    } catch (const CLI::ParseError& error) {
        return app.exit(error) == 0 ? 0 : 2;
    }
    return action();
}
