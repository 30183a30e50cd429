#include "platform/cli/store.h"

#include "core/store/backup.h"
#include "core/store/salvage.h"
#include "platform/cli/passphrase.h"

#include <fmt/format.h>

#include <iostream>
#include <memory>

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

struct Wanted {
    std::vector<std::filesystem::path> backups;
    std::filesystem::path to;
    std::filesystem::path passphrase;
};

Exit mend(const Context& context, const Wanted& wanted) {
    auto store = openStore(context);
    if (!store) {
        return store.error();
    }
    const auto passphrase = passphraseFrom(wanted.passphrase);
    if (!passphrase) {
        return passphrase.error();
    }
    const auto mended = store::mendMedia(*store, wanted.backups, *passphrase);
    if (!mended) {
        return complain(mended.error());
    }
    if (context.json) {
        printJson({{"brought", mended->brought}, {"wanting", mended->wanting}, {"damage", mended->damage}});
    } else {
        std::cout << fmt::format("brought back {} photos and memos; {} are in none of the backups\n",
                                 mended->brought.size(), mended->wanting.size());
    }
    for (const std::string& fault : mended->damage) {
        complain(Exit::Store, fault);
    }
    for (const std::string& name : mended->wanting) {
        complain(Exit::Store, "still missing or rotten: " + name);
    }
    return mended->wanting.empty() ? Exit::Done : Exit::Store;
}

Exit salvage(const Context& context, const Wanted& wanted) {
    const auto passphrase = passphraseFrom(wanted.passphrase);
    if (!passphrase) {
        return passphrase.error();
    }
    const auto salvaged = store::salvage(context.store, wanted.to, wanted.backups, *passphrase);
    if (!salvaged) {
        return complain(salvaged.error());
    }
    if (context.json) {
        printJson({{"folder", wanted.to.string()},
                   {"entries", salvaged->entries},
                   {"from_backups", salvaged->fromBackups},
                   {"media", salvaged->media},
                   {"faults", salvaged->faults},
                   {"sound", salvaged->report.sound()},
                   {"lost", salvaged->report.faults}});
    } else {
        std::cout << fmt::format("{}: {} entries, {} of them from backups, {} photos and memos\n",
                                 wanted.to.string(), salvaged->entries, salvaged->fromBackups,
                                 salvaged->media);
    }
    for (const auto* faults : {&salvaged->faults, &salvaged->report.faults}) {
        for (const std::string& fault : *faults) {
            complain(Exit::Store, fault);
        }
    }
    return salvaged->report.sound() ? Exit::Done : Exit::No;
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
    const auto wanted = std::make_shared<Wanted>();
    CLI::App* store = addCommand(root, "store", "Check the shop's store, rebuild, mend or salvage it",
                                 "undercowlctl store check");
    store->require_subcommand(1);
    addCommand(*store, "check", "Verify the database, the journal's chains, every media file and the tables",
               "undercowlctl store check --store ~/shop")
        ->callback([&context] { context.action = [&context] { return check(context); }; });
    addCommand(*store, "rebuild", "Make the tables anew from the journal's entries; nothing said is lost",
               "undercowlctl store rebuild --store ~/shop")
        ->callback([&context] { context.action = [&context] { return rebuild(context); }; });

    CLI::App* mending =
        addCommand(*store, "mend", "Bring photos and memos that are missing or rotten back from backups",
                   "undercowlctl store mend --from monday.backup --store ~/shop");
    mending->add_option("--from", wanted->backups, "Backups to look in")->type_name("FILE")->required();
    mending->add_option("--passphrase-file", wanted->passphrase, passphraseHelp)->type_name("FILE");
    mending->callback(
        [&context, wanted] { context.action = [&context, wanted] { return mend(context, *wanted); }; });

    CLI::App* saving =
        addCommand(*store, "salvage",
                   "Bring what can be read of a damaged store into a new place; backups fill the gaps",
                   "undercowlctl store salvage --store ~/shop --to ~/shop-again --from monday.backup");
    saving->add_option("--to", wanted->to, "New folder for the shop")->type_name("DIR")->required();
    saving->add_option("--from", wanted->backups, "Backups, besides the copies beside the database")
        ->type_name("FILE");
    saving->add_option("--passphrase-file", wanted->passphrase, passphraseHelp)->type_name("FILE");
    saving->callback(
        [&context, wanted] { context.action = [&context, wanted] { return salvage(context, *wanted); }; });
}

} // namespace undercowl::platform
