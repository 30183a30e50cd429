#include "platform/cli/handover.h"

#include "platform/cli/record.h"

#include <iostream>
#include <memory>

namespace undercowl::platform {
namespace {

struct Wanted {
    std::string job;
    std::filesystem::path pdf;
    std::filesystem::path html;
};

Exit handover(const Context& context, const Wanted& wanted) {
    if (wanted.pdf.empty() && wanted.html.empty())
        return complain(Exit::WrongUse, "say where the record goes: --pdf FILE, --html FILE or both");
    const auto store = openStore(context);
    if (!store)
        return store.error();
    const auto id = store->jobByNumberOrId(wanted.job);
    if (!id)
        return complain(id.error());
    const auto files = recordOf(*store, *id);
    if (!files)
        return files.error();
    nlohmann::ordered_json written{{"job", *id}};
    const auto put = [&](const char* name, const std::filesystem::path& file,
                         std::span<const std::byte> bytes) -> tl::expected<void, Exit> {
        if (file.empty())
            return {};
        if (auto done = writeFile(file, bytes); !done)
            return done;
        written[name] = file.string();
        if (!context.json)
            std::cout << file.string() << '\n';
        return {};
    };
    if (auto done = put("pdf", wanted.pdf, files->pdf); !done)
        return done.error();
    if (auto done = put("html", wanted.html, std::as_bytes(std::span{files->html})); !done)
        return done.error();
    if (context.json)
        printJson(written);
    return Exit::Done;
}

} // namespace

void addHandoverCommand(CLI::App& root, Context& context) {
    CLI::App* command = addCommand(root, "handover", "Write the owner's record of a job as PDF, HTML or both",
                                   "undercowlctl handover 2026-031 --pdf record.pdf --html record.html");
    const auto wanted = std::make_shared<Wanted>();
    command->add_option("JOB", wanted->job, "Number or id of the job")->required();
    command->add_option("--pdf", wanted->pdf, "File for the PDF")->type_name("FILE");
    command->add_option("--html", wanted->html, "File for the page, which holds its photos")
        ->type_name("FILE");
    command->callback(
        [&context, wanted] { context.action = [&context, wanted] { return handover(context, *wanted); }; });
}

} // namespace undercowl::platform
