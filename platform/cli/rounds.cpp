#include "platform/cli/rounds.h"

#include <fmt/format.h>

#include <algorithm>
#include <iostream>
#include <iterator>
#include <memory>

namespace undercowl::platform {
namespace {

using journal::RoundList;

// Those that come along where there is no shop.
tl::expected<std::vector<RoundList>, Exit> listsOf(const Context& context) {
    if (!context.storeGiven && !std::filesystem::exists(context.store / "shop.db"))
        return journal::builtInRounds();
    const auto store = openStore(context);
    return store ? roundListsOf(*store) : tl::unexpected(store.error());
}

std::size_t checksIn(const RoundList& list) {
    std::size_t count = 0;
    for (const journal::RoundGroup& group : list.groups)
        count += group.checks.size();
    return count;
}

Exit list(const Context& context) {
    const auto lists = listsOf(context);
    if (!lists)
        return lists.error();
    auto all = nlohmann::ordered_json::array();
    for (const RoundList& one : *lists) {
        if (context.json)
            all.push_back({{"key", one.key},
                           {"title", one.title},
                           {"use", journal::code(one.use)},
                           {"when", one.when},
                           {"checks", checksIn(one)}});
        else
            std::cout << fmt::format("{:15} {:9} {:3} checks  {}\n", one.key, journal::code(one.use),
                                     checksIn(one), one.title);
    }
    if (context.json)
        printJson({{"lists", all}});
    return Exit::Done;
}

// The file's text in either case: it is open, and what 'keep' reads.
Exit show(const Context& context, const std::string& key) {
    const auto lists = listsOf(context);
    if (!lists)
        return lists.error();
    const auto found = std::ranges::find(*lists, key, &RoundList::key);
    if (found == lists->end())
        return complain(Exit::No, fmt::format("there is no list \"{}\": see 'rounds list'", key));
    std::cout << journal::roundFile(*found);
    return Exit::Done;
}

Exit keep(const Context& context, const std::filesystem::path& file, const std::string& by) {
    const auto text = textOf(file);
    if (!text)
        return text.error();
    const auto read = journal::readRoundFile(*text);
    if (!read)
        return complain(Exit::WrongUse, file.string() + ": " + read.error());
    auto store = openStore(context, Opening::MayCreate);
    if (!store)
        return store.error();
    if (const auto someone = beSomeone(*store, by); !someone)
        return someone.error();
    if (const auto said = store->append(journal::roundKept(*read)); !said)
        return complain(said.error());
    if (context.json)
        printJson({{"key", read->key}, {"checks", checksIn(*read)}});
    else
        std::cout << fmt::format("kept: {}, {} checks\n", read->title, checksIn(*read));
    return Exit::Done;
}

} // namespace

tl::expected<std::vector<journal::RoundList>, Exit> roundListsOf(const store::Store& store) {
    const auto entries = store.entries(std::string(journal::shopStream));
    if (!entries && entries.error().fault == store::Fault::NotFound)
        return journal::builtInRounds();
    if (!entries)
        return tl::unexpected(complain(entries.error()));
    return journal::roundLists(*entries);
}

void addRoundsCommand(CLI::App& root, Context& context) {
    CLI::App* rounds = addCommand(root, "rounds", "Lists of checks by kind of machine",
                                  "undercowlctl rounds show front-disc > front-disc.json");
    rounds->require_subcommand(1);
    addCommand(*rounds, "list", "The lists as the shop has them", "undercowlctl rounds list")
        ->callback([&context] { context.action = [&context] { return list(context); }; });
    CLI::App* one = addCommand(*rounds, "show", "One list, as a file that 'keep' reads",
                               "undercowlctl rounds show front-disc > front-disc.json");
    const auto key = std::make_shared<std::string>();
    one->add_option("KEY", *key, "Key of the list")->required();
    one->callback([&context, key] { context.action = [&context, key] { return show(context, *key); }; });
    CLI::App* add = addCommand(*rounds, "keep", "Keep a list from a file, in place of the one of its key",
                               "undercowlctl rounds keep front-disc.json");
    const auto file = std::make_shared<std::filesystem::path>();
    const auto by = std::make_shared<std::string>();
    add->add_option("FILE", *file, "JSON as docs/rounds.md describes it")->required();
    add->add_option("--by", *by, "Who says it, where nobody works on this device yet");
    add->callback([&context, file, by] {
        context.action = [&context, file, by] { return keep(context, *file, *by); };
    });
}

} // namespace undercowl::platform
