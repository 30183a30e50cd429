#include "platform/cli/backup.h"

#include "core/store/backup.h"
#include "platform/cli/passphrase.h"

#include <fmt/chrono.h>
#include <fmt/format.h>

#include <unistd.h>

#include <iostream>
#include <memory>

namespace undercowl::platform {
namespace {

using Json = nlohmann::ordered_json;

struct Wanted {
    std::vector<std::filesystem::path> files;
    std::filesystem::path to;
    std::filesystem::path passphrase;
    std::vector<std::filesystem::path> since;
    std::filesystem::path sincePassphrase;
    bool incomplete{};
};

std::string when(job::TimeMs at) {
    return fmt::format("{:%Y-%m-%d %H:%M} UTC", fmt::gmtime(static_cast<std::time_t>(at / 1000)));
}

Json json(const store::BackupMade& made) {
    return {{"id", made.id},        {"made", when(made.at)},        {"entries", made.entries},
            {"media", made.media},  {"media_here", made.mediaHere}, {"bytes", made.bytes},
            {"faults", made.faults}};
}

std::string words(const store::BackupMade& made) {
    return fmt::format("{}: {} entries, {} photos and memos, {} of them in this file; {:.1f} MB",
                       when(made.at), made.entries, made.media, made.mediaHere,
                       static_cast<double>(made.bytes) / 1e6);
}

// Percent on a terminal, while it lasts.
store::Progress shown(const Context& context) {
    if (context.json || ::isatty(STDERR_FILENO) == 0) {
        return {};
    }
    return [last = std::size_t{101}](std::size_t done, std::size_t total) mutable {
        const std::size_t now = total == 0 ? 100 : done * 100 / total;
        if (now != last) {
            std::cerr << '\r' << now << " %" << (now == 100 ? "\n" : "") << std::flush;
            last = now;
        }
        return true;
    };
}

Exit list(const Context& context) {
    const auto all = store::rollingBackups(context.store);
    if (context.json) {
        Json copies = Json::array();
        for (const auto& copy : all) {
            copies.push_back({{"file", copy.file.string()}, {"made", when(copy.at)}, {"bytes", copy.bytes}});
        }
        printJson({{"copies", copies}});
    } else {
        for (const auto& copy : all) {
            std::cout << fmt::format("{}  {:.1f} MB  {}\n", when(copy.at),
                                     static_cast<double>(copy.bytes) / 1e6, copy.file.string());
        }
    }
    return all.empty() ? complain(Exit::No, "there is no copy of the database beside it yet") : Exit::Done;
}

Exit now(const Context& context) {
    const auto store = openStore(context);
    if (!store) {
        return store.error();
    }
    const auto made = store::backUpDatabase(*store);
    if (!made) {
        return complain(made.error());
    }
    if (context.json) {
        printJson({{"file", made->file.string()}, {"made", when(made->at)}, {"bytes", made->bytes}});
    } else {
        std::cout << made->file.string() << '\n';
    }
    return Exit::Done;
}

Exit write(const Context& context, const Wanted& wanted) {
    const auto store = openStore(context);
    if (!store) {
        return store.error();
    }
    const auto passphrase = passphraseFrom(wanted.passphrase);
    if (!passphrase) {
        return passphrase.error();
    }
    const auto earlier = wanted.sincePassphrase.empty() ? passphrase : passphraseFrom(wanted.sincePassphrase);
    if (!earlier) {
        return earlier.error();
    }
    if (!wanted.passphrase.empty() && passphrase->size() < store::shortestPassphrase) {
        return complain(Exit::WrongUse,
                        "the passphrase must have at least 8 characters; several words are best");
    }
    store::BackupWish wish;
    wish.passphrase = *passphrase;
    wish.earlier = wanted.since;
    wish.earlierPassphrase = *earlier;
    wish.progress = shown(context);
    const auto made = store::writeBackup(*store, wanted.files.front(), wish);
    if (!made) {
        return complain(made.error());
    }
    if (context.json) {
        printJson(json(*made));
    } else {
        std::cout << wanted.files.front().string() << ", " << words(*made) << '\n';
    }
    for (const std::string& fault : made->faults) {
        complain(Exit::Store, "not in the backup: " + fault);
    }
    return made->faults.empty() ? Exit::Done : Exit::Store;
}

Exit verify(const Context& context, const Wanted& wanted) {
    const auto passphrase = passphraseFrom(wanted.passphrase);
    if (!passphrase) {
        return passphrase.error();
    }
    Json all = Json::array();
    for (const auto& file : wanted.files) {
        const auto made = store::verifyBackup(file, *passphrase, shown(context));
        if (!made) {
            return complain({made.error().fault, file.string() + ": " + made.error().message});
        }
        if (context.json) {
            all.push_back(json(*made));
        } else {
            std::cout << file.string() << ": sound, " << words(*made) << '\n';
        }
    }
    if (context.json) {
        printJson({{"backups", all}});
    }
    return Exit::Done;
}

Exit restore(const Context& context, const Wanted& wanted) {
    const auto passphrase = passphraseFrom(wanted.passphrase);
    if (!passphrase) {
        return passphrase.error();
    }
    const auto restored =
        store::restoreBackup(wanted.files, wanted.to, *passphrase, wanted.incomplete, shown(context));
    if (!restored) {
        return complain(restored.error());
    }
    if (context.json) {
        Json answer = json(restored->from);
        answer["folder"] = wanted.to.string();
        answer["missing"] = restored->missing;
        answer["damage"] = restored->damage;
        answer["sound"] = restored->report.sound();
        printJson(answer);
    } else {
        std::cout << wanted.to.string() << ", as it was at " << words(restored->from) << '\n';
    }
    for (const auto* faults : {&restored->damage, &restored->report.faults}) {
        for (const std::string& fault : *faults) {
            complain(Exit::Store, fault);
        }
    }
    const bool whole = restored->report.sound() && restored->damage.empty() && restored->missing.empty();
    return whole ? Exit::Done : Exit::No;
}

} // namespace

void addBackupCommand(CLI::App& root, Context& context) {
    const auto wanted = std::make_shared<Wanted>();
    CLI::App* backup = addCommand(root, "backup", "Copy the whole shop into one file, and bring it back",
                                  "undercowlctl backup write /media/stick/shop.backup");
    backup->require_subcommand(1);
    const auto withPassphrase = [&](CLI::App* command) {
        command->add_option("--passphrase-file", wanted->passphrase, passphraseHelp)->type_name("FILE");
    };

    addCommand(*backup, "list", "Show the copies of the database that lie beside it",
               "undercowlctl backup list --store ~/shop")
        ->callback([&context] { context.action = [&context] { return list(context); }; });
    addCommand(*backup, "now", "Put a copy of the database beside it; old ones are thinned out",
               "undercowlctl backup now --store ~/shop")
        ->callback([&context] { context.action = [&context] { return now(context); }; });

    CLI::App* out = addCommand(*backup, "write", "Write jobs, photos and memos into one file, and verify it",
                               "undercowlctl backup write tuesday.backup --since monday.backup");
    out->add_option("FILE", wanted->files, "File to write; must not exist")->required()->expected(1);
    out->add_option("--since", wanted->since,
                    "Earlier backups whose photos and memos need not be copied again")
        ->type_name("FILE");
    out->add_option("--since-passphrase-file", wanted->sincePassphrase, "The same of the earlier backups")
        ->type_name("FILE");
    withPassphrase(out);
    out->callback(
        [&context, wanted] { context.action = [&context, wanted] { return write(context, *wanted); }; });

    CLI::App* check = addCommand(*backup, "verify", "Read backups again and check everything in them",
                                 "undercowlctl backup verify monday.backup");
    check->add_option("FILE", wanted->files, "Backups to read")->required();
    withPassphrase(check);
    check->callback(
        [&context, wanted] { context.action = [&context, wanted] { return verify(context, *wanted); }; });

    CLI::App* in = addCommand(*backup, "restore", "Put a backup into a new folder, never over what exists",
                              "undercowlctl backup restore monday.backup tuesday.backup --to ~/shop-again");
    in->add_option("FILE", wanted->files, "The backup, and the earlier ones that it follows")->required();
    in->add_option("--to", wanted->to, "New folder for the shop")->type_name("DIR")->required();
    in->add_flag("--incomplete", wanted->incomplete,
                 "Also when earlier backups are lost or a file is damaged: what can be read");
    withPassphrase(in);
    in->callback(
        [&context, wanted] { context.action = [&context, wanted] { return restore(context, *wanted); }; });
}

} // namespace undercowl::platform
