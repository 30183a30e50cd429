#include "platform/cli/knows.h"

#include "core/journal/knowledgefile.h"
#include "core/store/knowing.h"
#include "platform/cli/record.h"

#include <fmt/format.h>

#include <iostream>
#include <iterator>
#include <memory>

namespace undercowl::platform {
namespace {

using OrderedJson = nlohmann::ordered_json;

struct Model {
    std::string make;
    std::string model;
    std::filesystem::path file; // for the export; empty: none
};

tl::expected<job::ModelKnowledge, Exit> knowledgeOf(const store::Store& store, const Model& wanted) {
    const auto entries = store.entries(std::string(journal::shopStream));
    if (!entries && entries.error().fault != store::Fault::NotFound)
        return tl::unexpected(complain(entries.error()));
    auto known = store::knowledgeOf(store, entries ? *entries : std::vector<journal::Entry>{}, wanted.make,
                                    wanted.model, store.now());
    if (!known)
        return tl::unexpected(complain(known.error()));
    return *std::move(known);
}

OrderedJson toJson(const job::Fact& fact) {
    OrderedJson json{{"kind", job::code(fact.kind)}, {"what", fact.what}, {"says", fact.says}};
    if (!fact.source.empty())
        json["source"] = fact.source;
    json["jobs"] = fact.seen.size();
    return json;
}

void printFacts(const job::ModelKnowledge& known) {
    for (const job::Fact& fact : known.facts)
        std::cout << fmt::format("{:<11} {}{}{}{}  ({} job{})\n", job::code(fact.kind), fact.what,
                                 fact.says.empty() ? "" : ": ", fact.says,
                                 fact.source.empty() ? "" : " [" + fact.source + "]", fact.seen.size(),
                                 fact.seen.size() == 1 ? "" : "s");
    for (const auto& group : job::contradictions(known)) {
        std::cout << "! does not agree: " << group.front()->what << '\n';
        for (const job::Fact* fact : group)
            std::cout << fmt::format("    {}  ({} job{})\n", fact->says, fact->seen.size(),
                                     fact->seen.size() == 1 ? "" : "s");
    }
}

Exit knows(const Context& context, const Model& wanted) {
    const auto store = openStore(context);
    if (!store)
        return store.error();
    const auto known = knowledgeOf(*store, wanted);
    if (!known)
        return known.error();
    if (known->facts.empty())
        return complain(Exit::No,
                        fmt::format("nothing is known of {} {}: see the makes and models of 'job list'",
                                    wanted.make, wanted.model));
    if (!wanted.file.empty()) {
        const std::string text = journal::knowledgeFile(*known);
        if (auto done = writeFile(wanted.file, std::as_bytes(std::span{text})); !done)
            return done.error();
    }
    if (!context.json) {
        printFacts(*known);
        return Exit::Done;
    }
    OrderedJson json{{"make", known->make}, {"model", known->model}};
    if (known->firstYear)
        json["years"] = {*known->firstYear, *known->lastYear};
    json["facts"] = OrderedJson::array();
    for (const job::Fact& fact : known->facts)
        json["facts"].push_back(toJson(fact));
    json["contradictions"] = OrderedJson::array();
    for (const auto& group : job::contradictions(*known)) {
        auto sides = OrderedJson::array();
        for (const job::Fact* fact : group)
            sides.push_back(toJson(*fact));
        json["contradictions"].push_back(std::move(sides));
    }
    printJson(json);
    return Exit::Done;
}

Exit learn(const Context& context, const std::filesystem::path& file, const std::string& by) {
    const auto text = textOf(file);
    if (!text)
        return text.error();
    const auto known = journal::readKnowledgeFile(*text);
    if (!known)
        return complain(Exit::WrongUse, file.string() + ": " + known.error());
    auto store = openStore(context, Opening::MayCreate);
    if (!store)
        return store.error();
    if (const auto someone = beSomeone(*store, by); !someone)
        return someone.error();
    const auto drafts = journal::knowledgeLearned(*known, [&] { return store->newId(); });
    if (!drafts.empty())
        if (const auto said = store->append(drafts); !said)
            return complain(said.error());
    if (context.json)
        printJson({{"make", known->make}, {"model", known->model}, {"facts", known->facts.size()}});
    else
        std::cout << fmt::format("learned: {} {}, {} facts\n", known->make, known->model,
                                 known->facts.size());
    return Exit::Done;
}

} // namespace

void addKnowsCommand(CLI::App& root, Context& context) {
    auto* command =
        addCommand(root, "knows",
                   "What the shop has learned of a model: limits, torques, parts that fitted or not, "
                   "maps, adjustments, findings, minutes; nothing of any owner",
                   "undercowlctl knows Marrowin \"Tern 125\"");
    auto wanted = std::make_shared<Model>();
    command->add_option("make", wanted->make, "Make of the machine")->required();
    command->add_option("model", wanted->model, "Model, as it was typed when it was taken in")->required();
    command->add_option("--export", wanted->file, "File for other shops; nothing of any owner")
        ->type_name("FILE");
    command->callback(
        [&context, wanted] { context.action = [&context, wanted] { return knows(context, *wanted); }; });
    auto* learning = addCommand(root, "learn", "Take over what another shop knows of a model, from its file",
                                "undercowlctl learn tern-125.json");
    auto file = std::make_shared<std::filesystem::path>();
    auto by = std::make_shared<std::string>();
    learning->add_option("FILE", *file, "Written by 'knows --export'")->required();
    learning->add_option("--by", *by, "Who says it, where nobody works on this device yet");
    learning->callback([&context, file, by] {
        context.action = [&context, file, by] { return learn(context, *file, *by); };
    });
}

} // namespace undercowl::platform
