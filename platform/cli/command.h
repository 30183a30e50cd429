// What all commands of undercowlctl share.
//
// A command is a pair of files, platform/cli/NAME.h and NAME.cpp, with one function
// `void addNameCommand(CLI::App& root, Context& context)` that main.cpp calls. It adds its subcommands with
// addCommand(), which gives each its example, and lets each one's callback set Context::action. main runs the
// action after the whole command line has been read, and exits with what it answers.
//
// Results go to standard output, complaints to standard error. --json and --store are understood by every
// command, before and after its name.
#pragma once

#include "core/store/store.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>
#include <tl/expected.hpp>

#include <cstdint>
#include <filesystem>
#include <functional>
#include <string>
#include <string_view>

namespace undercowl::platform {

enum class Exit : std::uint8_t {
    Done = 0,
    No = 1,       // the answer is no: a verdict outside, a change found, nothing found
    WrongUse = 2, // wrong use or unreadable input
    Store = 3,    // the store is damaged, also where what can be read of it was answered, or cannot be opened
};

struct Context {
    bool json{};
    std::filesystem::path store; // given by --store, else the platform's data folder
    bool storeGiven{};
    std::function<Exit()> action; // set by the callback of the command that was called
    // Set by openStore(): only what can be read of the store was seen, so that nothing is answered with Done.
    mutable bool damaged{};
};

// Adds a command under 'parent', with an example under its --help: "undercowlctl job list".
CLI::App* addCommand(CLI::App& parent, const std::string& name, const std::string& description,
                     const std::string& example);

// Writes the value and a line end to standard output: two spaces deep, text as UTF-8 (what is not UTF-8 is
// replaced).
void printJson(const nlohmann::ordered_json& value);

// Says on standard error what is wrong and what to do about it; answers 'exit' so that it can be returned.
Exit complain(Exit exit, std::string_view message);
Exit complain(const store::Problem& problem); // the exit code follows from the fault

// Opens the store of the command line. MustExist complains about a folder that holds no store rather than
// making an empty one where a mistyped path points to. A damaged store, or one of a newer version, is opened
// for looking, which is complained about; whatever would write to it is refused. The error has been
// complained about already.
enum class Opening : std::uint8_t { MustExist, MayCreate };
[[nodiscard]] tl::expected<store::Store, Exit> openStore(const Context& context,
                                                         Opening opening = Opening::MustExist);

// A text file from outside: spreadsheet, list or knowledge. The error has been complained about already.
inline constexpr std::size_t largestText = std::size_t{16} << 20U; // bytes
[[nodiscard]] tl::expected<std::string, Exit> textOf(const std::filesystem::path& file);

// Who says it: the mechanic of this device, or a first one by name. The error has been complained about
// already.
[[nodiscard]] tl::expected<void, Exit> beSomeone(store::Store& store, const std::string& name);

} // namespace undercowl::platform
