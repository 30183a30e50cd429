#include "tests/fuzz/targets.h"

#include "core/handover/labels.h"
#include "core/handover/record.h"
#include "core/job/csv.h"
#include "core/journal/apply.h"
#include "core/journal/fold.h"
#include "core/journal/sheet.h"
#include "core/sight/exif.h"
#include "core/sight/metadata.h"
#include "core/sight/photo.h"
#include "core/store/archive.h"
#include "core/store/backupfile.h"
#include "core/store/entryjson.h"
#include "core/store/limits.h"
#include "core/talk/parse.h"
#include "core/trade/registry.h"
#include "core/units/date.h"
#include "core/units/parse.h"
#include "core/wiring/terminal.h"

#include <array>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <fstream>

namespace undercowl::fuzz {
namespace {

using Input = std::span<const std::byte>;

std::string_view text(Input input) {
    return {reinterpret_cast<const char*>(input.data()), input.size()};
}

void must(bool holds) {
    if (!holds) {
        std::abort();
    }
}

// libarchive reads ZIP files by seeking, hence from a file: in memory, where there is such a place.
const std::filesystem::path& scratch() {
    static const std::filesystem::path file =
        (std::filesystem::exists("/dev/shm") ? std::filesystem::path("/dev/shm")
                                             : std::filesystem::temp_directory_path()) /
        ("undercowl-fuzz-" + journal::newId(0));
    return file;
}

void archive(Input input) {
    std::ofstream(scratch(), std::ios::binary)
        .write(text(input).data(), static_cast<std::streamsize>(input.size()));
    const auto content = store::verifyArchive(scratch());
    must(content || !content.error().message.empty());
    std::filesystem::remove(scratch());
}

class Memory final : public store::ByteSource {
public:
    explicit Memory(Input input) : left_(input) {}
    store::Result<std::size_t> get(std::span<std::byte> into) override {
        const auto part = left_.first(std::min(left_.size(), into.size()));
        std::copy(part.begin(), part.end(), into.begin());
        left_ = left_.subspan(part.size());
        return part.size();
    }

private:
    Input left_;
};

void backup(Input input) {
    Memory memory(input);
    const auto content = store::readBackup(memory);
    must(content || !content.error().message.empty());
    Memory again(input);
    store::BackupVisitor past; // the damaged places
    past.damage = [](const std::string& what) { must(!what.empty()); };
    must(store::readBackup(again, past) || !content);
}

// A job's entries as an archive holds them; whatever they say, folding them gives a job.
void entries(Input input) {
    const auto file = store::jobFileFromJson(text(input));
    if (!file) {
        must(!file.error().message.empty());
        return;
    }
    (void)journal::foldJob(file->job, file->entries);
    const auto again = store::jobFileFromJson(store::toJson(*file));
    must(again && again->entries == file->entries);
}

// One entry's body: the first line is its kind, the rest the JSON.
void body(Input input) {
    const std::string_view all = text(input);
    const std::size_t end = std::min(all.find('\n'), all.size());
    journal::Draft draft{std::string(all.substr(0, end)),
                         "job-1",
                         "subject-1",
                         std::string(all.substr(std::min(end + 1, all.size()))),
                         {}};
    if (store::draftProblem(draft)) {
        return;
    }
    journal::Entry opened;
    opened.id = "entry-1";
    opened.device = "device-1";
    opened.number = 1;
    opened.kind = "job.opened";
    opened.stream = opened.subject = "job-1";
    opened.body = "{}";
    journal::Entry entry = opened;
    entry.id = "entry-2";
    entry.number = 2;
    entry.kind = draft.kind;
    entry.subject = draft.subject;
    entry.body = draft.body;
    const job::Job job = journal::foldJob("job-1", std::array{opened, entry});
    // The record escapes what was typed: no tag of the mechanic's reaches the page.
    const auto record = handover::ownersRecord(job, {}, {}, {});
    const std::string page =
        handover::html(record, handover::englishWords(), [](const std::string& name) { return name; });
    must(page.find("<script") == std::string::npos && page.find("<img src=x") == std::string::npos);
}

void units(Input input) {
    for (const auto dimension :
         {undercowl::units::Dimension::Torque, undercowl::units::Dimension::GaugePressure}) {
        for (const auto comma : {undercowl::units::Comma::MayGroup, undercowl::units::Comma::Decimal}) {
            const auto read = undercowl::units::parseQuantity(text(input), dimension, std::nullopt, comma);
            if (read) { // what is stored and shown reads as the same again
                const auto again =
                    undercowl::units::parseQuantity(read->text(), dimension, std::nullopt, comma);
                must(again && again->number.value == read->number.value && again->unit == read->unit);
            }
        }
    }
    (void)undercowl::units::parseDate(text(input));
    (void)wiring::terminalFromText(text(input));
}

void spoken(Input input) {
    const auto intent = talk::parse(text(input));
    must(intent || !intent.error().message.empty());
}

// Frame numbers, tyre markings, dates on a tyre: texts that a calculation reads. The first byte chooses it.
void typed(Input input) {
    const auto& all = trade::calculations();
    if (input.empty()) {
        return;
    }
    const auto& calculation = all[static_cast<std::size_t>(input[0]) % all.size()];
    std::map<std::string, std::string> given;
    std::string_view rest = text(input.subspan(1));
    for (const auto& one : calculation.declaration.inputs) {
        const std::size_t end = std::min(rest.find('\n'), rest.size());
        if (end > 0) {
            given[std::string(one.key)] = std::string(rest.substr(0, end));
        }
        rest.remove_prefix(std::min(end + 1, rest.size()));
    }
    const auto outcome =
        trade::run(calculation, given, undercowl::units::Date{std::chrono::year(2026) / 11 / 26});
    must(outcome || !outcome.error().message().empty());
}

// A spreadsheet from another program. What is read is the same after it was written and read again, and every
// line of its plan either says what is wrong with it, or what it would do: the store takes that.
void sheet(Input input) {
    const auto rows = job::readCsv(text(input));
    if (rows) {
        const auto again = job::readCsv(job::writeCsv(*rows));
        must(again && *again == *rows);
    }
    int count = 0;
    const auto plan = journal::planSheet(
        text(input), {{"job-1", "2026-001", "LTEST000000000001"}},
        [](const std::string&) { return std::vector<job::Part>(1); },
        [&] { return "id-" + std::to_string(++count); }, [&] { return "2026-" + std::to_string(++count); });
    must(plan || !plan.error().empty());
    for (std::size_t i = 0; plan && i < plan->lines.size(); ++i) {
        const auto& line = plan->lines[i];
        must(!line.says.empty() || !line.problems.empty());
        for (const auto& draft : line.drafts)
            must(!store::draftProblem(draft));
    }
}

// What a camera reads from a label.
void code(Input input) {
    if (const auto bag = handover::bagCode(text(input))) {
        must(handover::bagCode(handover::written(*bag)) == bag);
    }
}

void photo(Input input) {
    const int orientation = sight::jpegOrientation(input);
    must(orientation >= 1 && orientation <= 8);
    if (const auto without = sight::withoutLocation(input)) { // once dropped, nothing is left to drop
        must(!sight::withoutLocation(*without) && without->size() <= input.size() + 40);
    }
    const auto read = sight::Photo::decode(input);
    must(!read || (read->width() > 0 && read->height() > 0));
}

constexpr std::array all{Target{"archive", archive}, Target{"backup", backup},   Target{"body", body},
                         Target{"code", code},       Target{"entries", entries}, Target{"photo", photo},
                         Target{"sheet", sheet},     Target{"spoken", spoken},   Target{"typed", typed},
                         Target{"units", units}};

} // namespace

std::span<const Target> targets() {
    return all;
}

} // namespace undercowl::fuzz
