#include "platform/cli/sheet.h"

#include "core/store/sheets.h"
#include "platform/cli/record.h"
#include "platform/cli/today.h"

#include <fmt/format.h>

#include <algorithm>
#include <iostream>
#include <iterator>
#include <memory>

namespace undercowl::platform {
namespace {

Exit out(const Context& context, const std::filesystem::path& folder) {
    const auto store = openStore(context);
    if (!store)
        return store.error();
    const auto files = store::sheetsOf(*store);
    if (!files)
        return complain(files.error());
    std::error_code failed;
    std::filesystem::create_directories(folder, failed);
    auto names = nlohmann::ordered_json::array();
    for (const auto& [name, text] : *files) {
        if (auto done = writeFile(folder / name, std::as_bytes(std::span{text})); !done)
            return done.error();
        names.push_back((folder / name).string());
        if (!context.json)
            std::cout << (folder / name).string() << '\n';
    }
    if (context.json)
        printJson({{"files", names}});
    return Exit::Done;
}

void print(const journal::SheetPlan& plan) {
    for (const std::string& column : plan.unknown)
        std::cout << "column \"" << column << "\" is not brought in\n";
    for (const journal::SheetLine& line : plan.lines) {
        std::cout << fmt::format("{:4} {}\n", line.line, line.says);
        for (const std::string& problem : line.problems)
            std::cout << "     ! " << problem << '\n';
    }
}

nlohmann::ordered_json toJson(const journal::SheetPlan& plan) {
    auto lines = nlohmann::ordered_json::array();
    for (const journal::SheetLine& line : plan.lines)
        lines.push_back({{"line", line.line}, {"says", line.says}, {"problems", line.problems}});
    return {{"kind", plan.parts ? "parts" : "machines"}, {"not_brought_in", plan.unknown}, {"lines", lines}};
}

Exit in(const Context& context, const std::filesystem::path& file, bool keep) {
    const auto text = textOf(file);
    if (!text)
        return text.error();
    auto store = openStore(context);
    if (!store)
        return store.error();
    const auto plan =
        store::planOf(*store, *text, static_cast<int>(today().year()), [&] { return store->newId(); });
    if (!plan)
        return complain(plan.error().fault == store::Fault::Refused ? Exit::WrongUse : Exit::Store,
                        file.string() + ": " + plan.error().message);
    if (context.json)
        printJson(toJson(*plan));
    else
        print(*plan);
    const auto drafts = plan->drafts();
    if (keep && !drafts.empty())
        if (const auto said = store->append(drafts); !said)
            return complain(said.error());
    const bool wrong = std::any_of(plan->lines.begin(), plan->lines.end(),
                                   [](const journal::SheetLine& line) { return !line.problems.empty(); });
    return wrong ? Exit::No : Exit::Done;
}

} // namespace

void addSheetCommand(CLI::App& root, Context& context) {
    CLI::App* sheet = addCommand(root, "sheet", "Machines and parts as spreadsheets (CSV), in and out",
                                 "undercowlctl sheet check parts.csv");
    sheet->require_subcommand(1);
    CLI::App* outgoing =
        addCommand(*sheet, "out", "Everything as CSV files", "undercowlctl sheet out sheets");
    const auto folder = std::make_shared<std::filesystem::path>();
    outgoing->add_option("FOLDER", *folder, "Where the files go")->required();
    outgoing->callback(
        [&context, folder] { context.action = [&context, folder] { return out(context, *folder); }; });
    const auto add = [&](const char* name, const char* description, bool keep) {
        CLI::App* command =
            addCommand(*sheet, name, description, fmt::format("undercowlctl sheet {} parts.csv", name));
        const auto file = std::make_shared<std::filesystem::path>();
        command->add_option("FILE", *file, "CSV with the columns that 'sheet out' writes")->required();
        command->callback([&context, file, keep] {
            context.action = [&context, file, keep] { return in(context, *file, keep); };
        });
    };
    add("check", "What each line would do and what is wrong; exit 1 when something is", false);
    add("in", "Bring in the lines that nothing is wrong with; exit 1 when some were left out", true);
}

} // namespace undercowl::platform
