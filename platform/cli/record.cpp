#include "platform/cli/record.h"

#include "core/handover/record.h"
#include "platform/printing.h"

#include <fmt/format.h>

#include <fstream>
#include <system_error>

namespace undercowl::platform {

tl::expected<RecordFiles, Exit> recordOf(const store::Store& store, const job::Id& id) {
    const auto job = store.job(id);
    if (!job)
        return tl::unexpected(complain(job.error()));
    // A job without a machine or owner of its own still has a record.
    const auto machine = store.machine(job->machine);
    const auto owner = store.owner(job->owner);
    const auto mechanics = store.mechanics();
    if (!mechanics)
        return tl::unexpected(complain(mechanics.error()));
    const handover::Document document = handover::ownersRecord(*job, machine.value_or(job::Machine{}),
                                                               owner.value_or(job::Owner{}), *mechanics);
    const auto fileOf = [&store](const std::string& media) {
        return store.media(media).value_or(std::filesystem::path{});
    };

    const PrintingWithoutScreen printing;
    auto bytes = pdf(document, handover::englishWords(), fileOf);
    if (!bytes)
        return tl::unexpected(complain(Exit::WrongUse, bytes.error()));
    std::string page = handover::html(document, handover::englishWords(), [&](const std::string& media) {
        return pictureAddress(fileOf(media));
    });
    return RecordFiles{std::move(*bytes), std::move(page)};
}

tl::expected<void, Exit> writeFile(const std::filesystem::path& file, std::span<const std::byte> bytes) {
    std::filesystem::path beside = file;
    beside += ".part";
    {
        std::ofstream out{beside, std::ios::binary | std::ios::trunc};
        out.write(reinterpret_cast<const char*>(bytes.data()), static_cast<std::streamsize>(bytes.size()));
        out.flush();
        if (!out)
            return tl::unexpected(
                complain(Exit::WrongUse,
                         fmt::format("{} cannot be written: name a folder that exists, has room and is yours",
                                     file.string())));
    }
    std::error_code failed;
    std::filesystem::rename(beside, file, failed);
    if (failed) {
        std::filesystem::remove(beside, failed);
        return tl::unexpected(complain(
            Exit::WrongUse, fmt::format("{} cannot be replaced: close what has it open, or name another file",
                                        file.string())));
    }
    return {};
}

} // namespace undercowl::platform
