#include "platform/cli/command.h"

#include "core/journal/say.h"

#include <fmt/format.h>

#include <cstdio>
#include <iostream>
#include <system_error>

namespace undercowl::platform {

CLI::App* addCommand(CLI::App& parent, const std::string& name, const std::string& description,
                     const std::string& example) {
    CLI::App* command = parent.add_subcommand(name, description);
    command->footer("Also: --json for a machine-readable answer, --store DIR for another store.\n"
                    "Example:\n  " +
                    example);
    return command;
}

void printJson(const nlohmann::ordered_json& value) {
    std::cout << value.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) << '\n';
}

Exit complain(Exit exit, std::string_view message) {
    std::cout.flush();
    std::cerr << "undercowlctl: " << message << '\n';
    return exit;
}

Exit complain(const store::Problem& problem) {
    switch (problem.fault) {
    case store::Fault::Refused:
    case store::Fault::NotFound: return complain(Exit::WrongUse, problem.message);
    case store::Fault::CannotOpen:
    case store::Fault::Damaged:
    case store::Fault::TooNew:
    case store::Fault::DiskFull:
    case store::Fault::InputOutput: break;
    }
    return complain(Exit::Store, problem.message);
}

tl::expected<store::Store, Exit> openStore(const Context& context, Opening opening) {
    std::error_code ignored;
    if (opening == Opening::MustExist && !std::filesystem::exists(context.store / "shop.db", ignored)) {
        return tl::unexpected(complain(
            Exit::Store,
            fmt::format(
                "there is no store in {}. Name its folder with --store DIR, or make a demo shop there with: "
                "undercowlctl demo --store DIR",
                context.store.string())));
    }
    auto opened = store::Store::open(context.store);
    if (!opened) {
        return tl::unexpected(complain(opened.error()));
    }
    return std::move(*opened);
}

tl::expected<void, Exit> beSomeone(store::Store& store, const std::string& name) {
    if (!store.mechanic().empty())
        return {};
    if (name.empty())
        return tl::unexpected(complain(
            Exit::WrongUse, "nobody has been chosen to work on this device: add --by with your name"));
    const job::Mechanic mechanic{store.newId(), name};
    if (const auto said = store.append(journal::mechanicNamed(mechanic)); !said)
        return tl::unexpected(complain(said.error()));
    if (const auto chosen = store.chooseMechanic(mechanic.id); !chosen)
        return tl::unexpected(complain(chosen.error()));
    return {};
}

} // namespace undercowl::platform
