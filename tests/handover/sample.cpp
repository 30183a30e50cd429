#include "tests/handover/sample.h"

#include <algorithm>

namespace undercowl::handover::sample {

using colour::Insulation;
using job::TypedValue;
using wiring::Answer;
using wiring::Half;

namespace {

constexpr job::TimeMs noon = 1'763'985'600'000; // 2025-11-24 12:00 UTC, the same day wherever the test runs

job::Said said(const std::string& mechanic) {
    return {"entry", mechanic, noon};
}

job::StripStep step(const std::string& id, const std::string& task, const std::string& title, int order,
                    bool back) {
    job::StripStep result;
    result.id = id;
    result.task = task;
    result.title = title;
    result.bag = std::to_string(order + 1);
    result.order = order;
    result.said = said("m1");
    if (back)
        result.refitted = job::Refitted{said("m2"), ""};
    return result;
}

} // namespace

wiring::PlaceAnswer wire(Insulation base, std::optional<Insulation> tracer) {
    wiring::PlaceAnswer answer;
    answer.wire.colour = {base, tracer};
    answer.entry = "entry";
    return answer;
}

job::Machine machine() {
    return {"machine", "Marrowin", "Tern 125", 1987, "MT125-004417", ""};
}

job::Owner owner() {
    return {"owner", "Ilse Quandt", "", "", ""};
}

std::vector<job::Mechanic> mechanics() {
    return {{"m1", "Tove"}, {"m2", "Bram"}};
}

job::Job job() {
    job::Job job;
    job.id = "job";
    job.number = "2025-014";
    job.machine = "machine";
    job.owner = "owner";
    job.reason = "stood six winters";
    job.odometer = TypedValue{"18423", "km"};
    job.opened = said("m1");
    job.findings = {{"f1", "chafed loom", job::Severity::Note, "", true, "sleeved", said("m1")},
                    {"f2", "perished brake hose", job::Severity::Unsafe, "renew it", false, "", said("m1")}};
    job.tasks = {{"t1", "Switch cluster", false, "", 0}, {"t2", "Front brake", true, "hose", 1}};
    job.steps = {step("s1", "t1", "switch cover", 0, true), step("s2", "t1", "unplug connector", 1, true),
                 step("s3", "t2", "brake hose", 2, false)};
    job.steps.at(2).cautions = {"brake-proof"};
    job.history = {{"entry", "step.refitted", "s1", "m2", noon, false, false}};
    wiring::Gathering gathering;
    gathering.id = "g1";
    gathering.title = "right switch cluster";
    gathering.places = 6;
    gathering.seenFrom = wiring::Side::WireSide;
    gathering.latch = "top";
    gathering.at({Half::Loom, 1, 1}).answer(Answer::AsFound) = wire(Insulation::GN, Insulation::WH);
    wiring::PlaceAnswer stop = wire(Insulation::BK);
    stop.wire.function = "stop lamp";
    stop.wire.din = "54";
    stop.wire.terminal = {wiring::TerminalKind::Blade, 6.3};
    gathering.at({Half::Loom, 3, 1}).answer(Answer::AsFound) = stop;
    job.gatherings = {gathering};
    job.wireChecks = {
        {"g1", {Half::Loom, 1, 1}, job::MatchOutcome::Matches, Answer::AsFound, "", said("m2")}};
    job::Reading reading;
    reading.what = "battery at rest";
    reading.value = {"12.61", "V"};
    reading.instrument = "multimeter";
    reading.uncertainty = "0.05 V (k = 2)";
    reading.low = TypedValue{"12.4", "V"};
    reading.limitSource = "shop's own record";
    reading.verdict = "within";
    job.readings = {reading};
    job.parts = {{"p1", "brake hose", "7731-B", job::PartState::Ordered, "", "f2", said("m1")}};
    job.rechecks = {{"r1", "brake hose unions", TypedValue{"100", "km"}, 30, said("m1")}};
    return job;
}

std::vector<std::string> lines(const job::Job& job) {
    const Document document = ownersRecord(job, machine(), owner(), mechanics());
    const Words words = englishWords();
    std::vector<std::string> result{words(document.title)};
    const auto row = [&](const std::vector<Text>& cells) {
        std::string line;
        for (const Text& cell : cells)
            line += (line.empty() ? "" : " | ") + words(cell);
        result.push_back(line);
    };
    for (const Section& part : document.sections) {
        result.push_back("# " + words(part.title));
        for (const Block& block : part.blocks) {
            if (const auto* paragraph = std::get_if<Paragraph>(&block)) {
                result.push_back((paragraph->weight == Weight::Caution ? "! " : "") + words(paragraph->text));
            } else if (const auto* table = std::get_if<Table>(&block)) {
                row(table->head);
                for (const Row& each : table->rows)
                    row(each.cells);
            } else {
                for (const Picture& picture : std::get<Pictures>(block).pictures)
                    row({picture.media, picture.caption});
            }
        }
    }
    return result;
}

bool holds(const std::vector<std::string>& lines, const std::string& line) {
    return std::find(lines.begin(), lines.end(), line) != lines.end();
}

std::vector<std::string> section(const std::vector<std::string>& lines, const std::string& title) {
    auto first = std::find(lines.begin(), lines.end(), "# " + title);
    if (first == lines.end())
        return {};
    ++first;
    const auto last =
        std::find_if(first, lines.end(), [](const std::string& line) { return line.rfind("# ", 0) == 0; });
    return {first, last};
}

} // namespace undercowl::handover::sample
