#include "platform/cli/find.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <iostream>
#include <memory>
#include <vector>

namespace undercowl::platform {
namespace {

struct Wanted {
    std::vector<std::string> words;
    std::size_t most{50};
};

std::string_view code(store::HitKind kind) {
    constexpr std::array<std::string_view, 10> codes{"machine", "owner", "job",     "finding", "step",
                                                     "wire",    "part",  "reading", "memo",    "photo"};
    return codes.at(static_cast<std::size_t>(kind));
}

Exit find(const Context& context, const Wanted& wanted) {
    const auto store = openStore(context);
    if (!store)
        return store.error();
    const auto hits = store->find(fmt::format("{}", fmt::join(wanted.words, " ")), wanted.most);
    if (!hits)
        return complain(hits.error());
    if (context.json) {
        auto list = nlohmann::ordered_json::array();
        for (const store::Hit& hit : *hits)
            list.push_back({{"kind", code(hit.kind)},
                            {"job", hit.job},
                            {"subject", hit.subject},
                            {"title", hit.title},
                            {"snippet", hit.snippet},
                            {"machine", hit.machine}});
        printJson({{"hits", list}});
    } else {
        const auto jobs = store->jobs();
        if (!jobs)
            return complain(jobs.error());
        const auto numberOf = [&](const std::string& id) {
            const auto found = std::ranges::find(*jobs, id, &store::JobLine::id);
            return found == jobs->end() ? std::string{} : ", job " + found->number;
        };
        for (const store::Hit& hit : *hits)
            std::cout << fmt::format("{:8} {}{}{}\n", code(hit.kind),
                                     hit.snippet.empty() ? hit.title : hit.snippet,
                                     hit.machine.empty() ? "" : "  - " + hit.machine, numberOf(hit.job));
    }
    if (hits->empty() && !context.json)
        return complain(Exit::No, "nothing that was noted holds all of these words");
    return hits->empty() ? Exit::No : Exit::Done;
}

} // namespace

void addFindCommand(CLI::App& root, Context& context) {
    CLI::App* command =
        addCommand(root, "find", "Find words, or the beginnings of words, in everything noted",
                   "undercowlctl find tail lamp");
    const auto wanted = std::make_shared<Wanted>();
    command->add_option("WORDS", wanted->words, "All of them must occur")->required();
    command->add_option("--most", wanted->most, "Show at most so many")
        ->check(CLI::Range(1, 1000))
        ->capture_default_str();
    command->callback(
        [&context, wanted] { context.action = [&context, wanted] { return find(context, *wanted); }; });
}

} // namespace undercowl::platform
