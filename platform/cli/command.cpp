#include "platform/cli/command.h"

#include "core/journal/say.h"

#include <fmt/format.h>

#include <cstdio>
#include <fstream>
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
    const auto holds = [&](const char* name) {
        return std::filesystem::exists(context.store / name, ignored);
    };
    if (opening == Opening::MustExist && !holds("shop.db") && !holds("media") && !holds("backups")) {
        return tl::unexpected(complain(
            Exit::Store,
            fmt::format(
                "there is no store in {}. Name its folder with --store DIR, or make a demo shop there with: "
                "undercowlctl demo --store DIR",
                context.store.string())));
    }
    auto opened = store::Store::open(context.store);
    if (opened) {
        return std::move(*opened);
    }
    const store::Fault fault = opened.error().fault;
    if (store::mayBeLookedAt(fault)) {
        if (auto looking = store::Store::openReadable(context.store, store::systemClock(), fault)) {
            complain(Exit::Store, // and what would write says it again
                     looking->readOnly() + (fault == store::Fault::Damaged
                                                ? " Do so with 'undercowlctl store salvage --to NEWFOLDER'."
                                                : ""));
            context.damaged = fault == store::Fault::Damaged;
            return std::move(*looking);
        }
    }
    return tl::unexpected(complain(opened.error()));
}

tl::expected<std::string, Exit> textOf(const std::filesystem::path& file) {
    std::error_code error;
    std::ifstream in(file, std::ios::binary);
    if (!std::filesystem::is_regular_file(file, error) || !in) {
        return tl::unexpected(complain(Exit::WrongUse, file.string() + ": this file cannot be read"));
    }
    std::string text(largestText + 1, '\0');
    in.read(text.data(), static_cast<std::streamsize>(text.size()));
    text.resize(static_cast<std::size_t>(in.gcount()));
    if (in.bad()) {
        return tl::unexpected(complain(Exit::WrongUse, file.string() + ": this file cannot be read"));
    }
    if (text.size() > largestText) {
        return tl::unexpected(complain(
            Exit::WrongUse, fmt::format("{}: has more than {} MiB, which is more than is read of a text",
                                        file.string(), largestText >> 20U)));
    }
    return text;
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
