#include "platform/cli/store.h"

#include <fmt/format.h>

#include <iostream>

namespace undercowl::platform {
namespace {

Exit check(const Context& context) {
    const auto store = openStore(context);
    if (!store) {
        return store.error();
    }
    const auto report = store->check();
    if (!report) {
        return complain(report.error());
    }
    if (context.json) {
        printJson({{"sound", report->sound()},
                   {"entries", report->entries},
                   {"media", report->mediaFiles},
                   {"jobs", report->jobs},
                   {"faults", report->faults}});
    } else {
        std::cout << fmt::format("{}: {} entries, {} media files, {} jobs\n",
                                 report->sound() ? "sound" : "damaged", report->entries, report->mediaFiles,
                                 report->jobs);
    }
    for (const std::string& fault : report->faults) {
        complain(Exit::Store, fault);
    }
    return report->sound() ? Exit::Done : Exit::Store;
}

Exit rebuild(const Context& context) {
    auto store = openStore(context);
    if (!store) {
        return store.error();
    }
    if (const auto done = store->rebuild(); !done) {
        return complain(done.error());
    }
    const auto jobs = store->jobs();
    if (!jobs) {
        return complain(jobs.error());
    }
    if (context.json) {
        printJson({{"rebuilt", true}, {"jobs", jobs->size()}});
    } else {
        std::cout << fmt::format("rebuilt from the journal: {} jobs\n", jobs->size());
    }
    return Exit::Done;
}

} // namespace

void addStoreCommand(CLI::App& root, Context& context) {
    CLI::App* store =
        addCommand(root, "store", "Check the shop's store, or rebuild its tables from the journal",
                   "undercowlctl store check");
    store->require_subcommand(1);
    addCommand(*store, "check", "Verify the database, the journal's chains, every media file and the tables",
               "undercowlctl store check --store ~/shop")
        ->callback([&context] { context.action = [&context] { return check(context); }; });
    addCommand(*store, "rebuild", "Make the tables anew from the journal's entries; nothing said is lost",
               "undercowlctl store rebuild --store ~/shop")
        ->callback([&context] { context.action = [&context] { return rebuild(context); }; });
}

} // namespace undercowl::platform
