#include "platform/cli/orders.h"

#include "core/handover/orders.h"
#include "core/units/date.h"
#include "platform/cli/record.h"
#include "platform/cli/today.h"
#include "platform/printing.h"

#include <iostream>
#include <memory>

namespace undercowl::platform {
namespace {

struct Wanted {
    std::filesystem::path csv;
    std::filesystem::path pdf;
};

tl::expected<std::vector<handover::OrderGroup>, Exit> ordersOf(const store::Store& store) {
    const auto jobs = store.jobs(0); // those that are handed over order nothing
    if (!jobs)
        return tl::unexpected(complain(jobs.error()));
    std::vector<handover::WantedPart> wanted;
    for (const store::JobLine& line : *jobs) {
        const auto job = store.job(line.id);
        if (!job)
            return tl::unexpected(complain(job.error()));
        const auto machine = store.machine(job->machine);
        for (handover::WantedPart& part : handover::toOrder(*job, machine.value_or(job::Machine{})))
            wanted.push_back(std::move(part));
    }
    return handover::bySupplier(wanted);
}

nlohmann::ordered_json toJson(const handover::OrderGroup& group) {
    auto parts = nlohmann::ordered_json::array();
    for (const handover::WantedPart& wanted : group.parts)
        parts.push_back({{"name", wanted.part.name},
                         {"number", wanted.part.number},
                         {"other_numbers", wanted.part.otherNumbers},
                         {"state", job::code(wanted.part.state)},
                         {"price", wanted.part.price ? wanted.part.price->digits : ""},
                         {"currency", wanted.part.price ? wanted.part.price->unit : ""},
                         {"job", wanted.jobNumber},
                         {"machine", wanted.machine},
                         {"for", wanted.forWhat}});
    auto sums = nlohmann::ordered_json::array();
    for (const job::TypedValue& sum : group.sums)
        sums.push_back({{"sum", sum.digits}, {"currency", sum.unit}});
    return {{"supplier", group.supplier},
            {"parts", parts},
            {"sums", sums},
            {"without_price", group.withoutPrice}};
}

Exit orders(const Context& context, const Wanted& wanted) {
    const auto store = openStore(context);
    if (!store)
        return store.error();
    const auto groups = ordersOf(*store);
    if (!groups)
        return groups.error();
    if (!wanted.csv.empty()) {
        const std::string text = handover::orderCsv(*groups);
        if (auto done = writeFile(wanted.csv, std::as_bytes(std::span{text})); !done)
            return done.error();
    }
    if (!wanted.pdf.empty()) {
        const PrintingWithoutScreen printing;
        const auto paper =
            pdf(handover::orderDocument(*groups, units::formatDate(today())), handover::englishWords(),
                [](const std::string&) { return std::filesystem::path{}; });
        if (!paper)
            return complain(Exit::WrongUse, paper.error());
        if (auto done = writeFile(wanted.pdf, *paper); !done)
            return done.error();
    }
    if (context.json) {
        auto all = nlohmann::ordered_json::array();
        for (const handover::OrderGroup& group : *groups)
            all.push_back(toJson(group));
        printJson({{"suppliers", all}});
    } else {
        std::cout << handover::orderText(*groups, handover::englishWords());
    }
    if (groups->empty())
        return complain(Exit::No, "nothing is wanted or asked for");
    return Exit::Done;
}

} // namespace

void addOrdersCommand(CLI::App& root, Context& context) {
    CLI::App* command = addCommand(
        root, "orders", "Everything to order, for all machines in the shop; exit 1 when there is nothing",
        "undercowlctl orders --csv orders.csv --pdf orders.pdf");
    const auto wanted = std::make_shared<Wanted>();
    command->add_option("--csv", wanted->csv, "File for the spreadsheet")->type_name("FILE");
    command->add_option("--pdf", wanted->pdf, "File for the list on paper")->type_name("FILE");
    command->callback(
        [&context, wanted] { context.action = [&context, wanted] { return orders(context, *wanted); }; });
}

} // namespace undercowl::platform
