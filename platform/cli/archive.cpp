#include "platform/cli/archive.h"

#include "core/store/archive.h"
#include "platform/cli/record.h"

#include <fmt/format.h>

#include <iostream>
#include <memory>

namespace undercowl::platform {
namespace {

using Json = nlohmann::ordered_json;

struct Wanted {
    std::string job;
    std::filesystem::path file;
    bool withoutRecord{};
    bool overwrite{};
};

Json json(const store::ArchiveContent& content, const std::filesystem::path& file) {
    return {{"archive", file.string()},   {"job", content.job},     {"number", content.number},
            {"entries", content.entries}, {"media", content.media}, {"record", content.record}};
}

std::string words(const store::ArchiveContent& content) {
    return fmt::format("job {}: {} entries, {} media files, {}",
                       content.number.empty() ? content.job : content.number, content.entries, content.media,
                       content.record ? "with its record" : "without a record");
}

Exit exportArchive(const Context& context, const Wanted& wanted) {
    std::error_code ignored;
    if (!wanted.overwrite && std::filesystem::exists(wanted.file, ignored)) {
        return complain(Exit::WrongUse, fmt::format("{} exists already: give another name, or --overwrite",
                                                    wanted.file.string()));
    }
    const auto store = openStore(context);
    if (!store) {
        return store.error();
    }
    const auto id = store->jobByNumberOrId(wanted.job);
    if (!id) {
        return complain(id.error());
    }
    std::vector<std::byte> record;
    if (!wanted.withoutRecord) {
        auto made = recordOf(*store, *id);
        if (!made) {
            return made.error();
        }
        record = std::move(made->pdf);
    }
    const auto content = store::exportJob(*store, *id, wanted.file, record);
    if (!content) {
        return complain(content.error());
    }
    if (context.json) {
        printJson(json(*content, wanted.file));
    } else {
        std::cout << wanted.file.string() << ": " << words(*content) << '\n';
    }
    return Exit::Done;
}

Exit importArchive(const Context& context, const Wanted& wanted) {
    auto store = openStore(context, Opening::MayCreate);
    if (!store) {
        return store.error();
    }
    const auto imported = store::importArchive(*store, wanted.file);
    if (!imported) {
        return complain(imported.error());
    }
    if (context.json) {
        Json answer = json(imported->content, wanted.file);
        answer["new_entries"] = imported->newEntries;
        answer["new_media"] = imported->newMedia;
        printJson(answer);
    } else {
        std::cout << words(imported->content)
                  << fmt::format("; new here: {} entries, {} media files\n", imported->newEntries,
                                 imported->newMedia);
    }
    return Exit::Done;
}

Exit verifyArchive(const Context& context, const Wanted& wanted) {
    const auto content = store::verifyArchive(wanted.file);
    if (!content) {
        return complain(content.error());
    }
    if (context.json) {
        printJson(json(*content, wanted.file));
    } else {
        std::cout << "sound: " << words(*content) << '\n';
    }
    return Exit::Done;
}

} // namespace

void addArchiveCommand(CLI::App& root, Context& context) {
    const auto wanted = std::make_shared<Wanted>();
    CLI::App* archive = addCommand(root, "archive", "Carry one job from store to store in a ZIP file",
                                   "undercowlctl archive export 2026-031 --file 2026-031.zip");
    archive->require_subcommand(1);

    CLI::App* out = addCommand(*archive, "export", "Write a job with its journal, photos and record",
                               "undercowlctl archive export 2026-031 --file 2026-031.zip");
    out->add_option("JOB", wanted->job, "Number or id of the job")->required();
    out->add_option("--file", wanted->file, "File to write")->type_name("FILE")->required();
    out->add_flag("--without-record", wanted->withoutRecord, "Leave the owner's record (PDF) out");
    out->add_flag("--overwrite", wanted->overwrite, "Replace a file that exists");
    out->callback([&context, wanted] {
        context.action = [&context, wanted] { return exportArchive(context, *wanted); };
    });

    CLI::App* in = addCommand(*archive, "import", "Take a job in; what is here already is not taken twice",
                              "undercowlctl archive import 2026-031.zip --store ~/shop");
    in->add_option("FILE", wanted->file, "Archive to read")->required();
    in->callback([&context, wanted] {
        context.action = [&context, wanted] { return importArchive(context, *wanted); };
    });

    CLI::App* verify = addCommand(*archive, "verify", "Check everything in an archive without taking it",
                                  "undercowlctl archive verify 2026-031.zip");
    verify->add_option("FILE", wanted->file, "Archive to read")->required();
    verify->callback([&context, wanted] {
        context.action = [&context, wanted] { return verifyArchive(context, *wanted); };
    });
}

} // namespace undercowl::platform
