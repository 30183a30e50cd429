#include "platform/cli/consumable.h"

#include "core/job/consumable.h"
#include "platform/cli/today.h"

#include <iostream>
#include <memory>

namespace undercowl::platform {
namespace {

struct Wanted {
    job::ConsumableUse use;
    int days{job::brakeFluidDaysOpen};
};

Exit consumable(const Context& context, const Wanted& wanted) {
    const auto against = job::againstUse(wanted.use, today(), wanted.days);
    if (context.json) {
        auto all = nlohmann::ordered_json::array();
        for (const job::Message& message : against)
            all.push_back(job::english(message));
        printJson({{"against", all}});
    } else if (against.empty()) {
        std::cout << "nothing is known that speaks against it\n";
    }
    if (!context.json)
        for (const job::Message& message : against)
            std::cout << "! " << job::english(message) << '\n';
    return against.empty() ? Exit::Done : Exit::No;
}

} // namespace

void addConsumableCommand(CLI::App& root, Context& context) {
    CLI::App* command = addCommand(
        root, "consumable", "What speaks against a fluid before it is used; exit 1 when something does",
        "undercowlctl consumable \"brake fluid\" --grade \"DOT 4\" --limit \"DOT 3 or DOT 4\" --opened "
        "2026-05-02");
    const auto wanted = std::make_shared<Wanted>();
    command->add_option("WHAT", wanted->use.what, "Fluid, grease or sealant")->required();
    command->add_option("--grade", wanted->use.grade, "As on the container");
    command->add_option("--limit", wanted->use.limit, "Grades that the machine allows");
    command->add_option("--opened", wanted->use.opened, "Day on which the container was opened");
    command->add_option("--days", wanted->days, "How long opened brake fluid is still good, in days")
        ->check(CLI::Range(1, 10000));
    command->callback(
        [&context, wanted] { context.action = [&context, wanted] { return consumable(context, *wanted); }; });
}

} // namespace undercowl::platform
