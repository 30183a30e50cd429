#include "platform/cli/knows.h"

#include "core/job/knowledge.h"

#include <fmt/format.h>

#include <algorithm>
#include <iostream>
#include <memory>

namespace undercowl::platform {
namespace {

using OrderedJson = nlohmann::ordered_json;

struct Model {
    std::string make;
    std::string model;
};

// Of all jobs of the model. Jobs whose machine is not described teach nothing.
store::Result<job::ModelKnowledge> knowledgeOf(const store::Store& store, const Model& wanted) {
    job::ModelKnowledge known{wanted.make, wanted.model, {}, {}, {}};
    const auto jobs = store.jobs();
    if (!jobs)
        return tl::unexpected(jobs.error());
    for (const store::JobLine& line : *jobs) {
        const auto job = store.job(line.id);
        if (!job)
            return tl::unexpected(job.error());
        if (job->machine.empty())
            continue;
        const auto machine = store.machine(job->machine);
        if (!machine)
            return tl::unexpected(machine.error());
        if (!job::sameModel(machine->make, machine->model, wanted.make, wanted.model))
            continue;
        job::Owner owner;
        if (!job->owner.empty()) {
            auto found = store.owner(job->owner);
            if (!found)
                return tl::unexpected(found.error());
            owner = std::move(*found);
        }
        known = job::merged(known, job::learn(*job, *machine, owner, store.now()));
    }
    return known;
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
        return complain(known.error());
    if (known->facts.empty())
        return complain(Exit::No,
                        fmt::format("nothing is known of {} {}: see the makes and models of 'job list'",
                                    wanted.make, wanted.model));
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
    command->callback(
        [&context, wanted] { context.action = [&context, wanted] { return knows(context, *wanted); }; });
}

} // namespace undercowl::platform
