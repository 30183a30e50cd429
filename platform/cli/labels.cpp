#include "platform/cli/labels.h"

#include "platform/cli/record.h"
#include "platform/labels.h"
#include "platform/printing.h"

#include <algorithm>
#include <iostream>
#include <memory>

namespace undercowl::platform {
namespace {

struct Wanted {
    std::string job;
    std::filesystem::path pdf;
    std::string stock{"a4"};
    int first{1};
    std::vector<std::string> bags; // empty: all
};

nlohmann::ordered_json toJson(const handover::BagLabel& label) {
    return {{"bag", label.bag},         {"machine", label.machine}, {"steps", label.steps},
            {"content", label.content}, {"empty", label.open},      {"code", label.code}};
}

Exit labels(const Context& context, const Wanted& wanted) {
    const auto stock = labelStock(wanted.stock);
    if (!stock)
        return complain(Exit::WrongUse, "--stock: \"" + wanted.stock + "\" is none: there are a4 and letter");
    const auto store = openStore(context);
    if (!store)
        return store.error();
    const auto id = store->jobByNumberOrId(wanted.job);
    if (!id)
        return complain(id.error());
    const auto job = store->job(*id);
    if (!job)
        return complain(job.error());
    const auto machine = store->machine(job->machine);
    auto all = handover::bagLabels(*job, machine.value_or(job::Machine{}));
    for (const std::string& bag : wanted.bags)
        if (std::ranges::find(all, bag, &handover::BagLabel::bag) == all.end())
            return complain(Exit::No, "--bag: the job has no bag \"" + bag + "\"");
    if (!wanted.bags.empty())
        std::erase_if(all, [&](const handover::BagLabel& label) {
            return std::ranges::find(wanted.bags, label.bag) == wanted.bags.end();
        });
    if (!wanted.pdf.empty()) {
        const PrintingWithoutScreen printing;
        const auto sheet = labelSheet(all, *stock, wanted.first);
        if (!sheet)
            return complain(Exit::WrongUse, sheet.error());
        if (auto done = writeFile(wanted.pdf, *sheet); !done)
            return done.error();
    }
    if (context.json) {
        auto json = nlohmann::ordered_json::array();
        for (const handover::BagLabel& label : all)
            json.push_back(toJson(label));
        printJson({{"job", *id}, {"labels", json}, {"pdf", wanted.pdf.string()}});
        return Exit::Done;
    }
    for (const handover::BagLabel& label : all) {
        std::cout << "bag " << label.bag << (label.open ? " (all of it is on again)" : "") << '\n';
        for (const std::string& step : label.steps)
            std::cout << "  " << step << '\n';
        for (const std::string& content : label.content)
            std::cout << "    " << content << '\n';
    }
    if (!wanted.pdf.empty())
        std::cout << wanted.pdf.string() << '\n';
    return Exit::Done;
}

} // namespace

void addLabelsCommand(CLI::App& root, Context& context) {
    CLI::App* command = addCommand(root, "labels", "The bags of a job, and labels for them with a QR code",
                                   "undercowlctl labels 2026-031 --pdf labels.pdf --stock a4 --first 5");
    const auto wanted = std::make_shared<Wanted>();
    command->add_option("JOB", wanted->job, "Number or id of the job")->required();
    command->add_option("--pdf", wanted->pdf, "File for the sheet")->type_name("FILE");
    command->add_option("--stock", wanted->stock,
                        "a4 (3 x 8 of 70 x 37 mm) or letter (3 x 10 of 2 5/8 x 1 in); print at 100 %");
    command->add_option("--first", wanted->first, "Place of the first label, to use up a begun sheet");
    command->add_option("--bag", wanted->bags, "Only this bag; may be given again");
    command->callback(
        [&context, wanted] { context.action = [&context, wanted] { return labels(context, *wanted); }; });
}

} // namespace undercowl::platform
