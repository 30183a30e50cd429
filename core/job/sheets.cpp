#include "core/job/sheets.h"

#include "core/job/csv.h"
#include "core/job/refit.h"

#include "core/units/date.h"

#include <chrono>
#include <functional>

namespace undercowl::job {
namespace {

using Rows = std::vector<CsvRow>;

// The day in UTC: a table is read wherever it goes.
std::string day(TimeMs at) {
    const auto days = std::chrono::floor<std::chrono::days>(
        std::chrono::sys_time<std::chrono::milliseconds>(std::chrono::milliseconds(at)));
    return units::formatDate(units::Date(days));
}

std::string joined(const std::vector<std::string>& words, std::string_view between) {
    std::string all;
    for (const std::string& word : words)
        all += (all.empty() ? "" : std::string(between)) + word;
    return all;
}

std::string quantity(const std::optional<TypedValue>& value) {
    if (!value)
        return {};
    return value->unit.empty() ? value->digits : value->digits + " " + value->unit;
}

std::string digits(const std::optional<TypedValue>& value) {
    return value ? value->digits : std::string{};
}

std::string unit(const std::optional<TypedValue>& value) {
    return value ? value->unit : std::string{};
}

std::string hardwareText(const Hardware& piece) {
    std::string text = std::to_string(piece.count) + " x " + piece.what;
    for (const std::string& more : {piece.thread, piece.length, quantity(piece.torque)})
        text += (more.empty() ? "" : " ") + more;
    return text;
}

std::string taskOf(const Job& job, const Id& id) {
    const auto* task = findTask(job, id);
    return task == nullptr ? std::string{} : task->title;
}

std::string yes(bool is) {
    return is ? "yes" : "no";
}

void machines(const SheetJob& each, Rows& rows) {
    const auto& [job, machine, owner] = each;
    rows.push_back({job.number, machine.make, machine.model,
                    machine.year ? std::to_string(*machine.year) : "", machine.frameNumber, owner.name,
                    owner.phone, owner.mail, owner.address, job.reason, quantity(job.odometer),
                    day(job.opened.at), job.handedOver ? day(job.handedOver->said.at) : std::string{}});
}

void findings(const SheetJob& each, Rows& rows) {
    for (const Finding& finding : each.job.findings)
        rows.push_back({each.job.number, finding.text, std::string(code(finding.severity)), finding.toDo,
                        yes(finding.settled), finding.settledHow,
                        finding.refused ? finding.refused->by : std::string{}, day(finding.said.at)});
}

void tasks(const SheetJob& each, Rows& rows) {
    for (const Task& task : each.job.tasks)
        rows.push_back({each.job.number, task.title, task.waiting ? task.waitingFor : std::string{},
                        task.minutes ? std::to_string(*task.minutes) : std::string{},
                        yes(finished(each.job, task))});
}

void steps(const SheetJob& each, Rows& rows) {
    for (const StripStep& step : each.job.steps) {
        std::vector<std::string> hardware;
        for (const Hardware& piece : step.hardware)
            hardware.push_back(hardwareText(piece));
        rows.push_back({each.job.number, taskOf(each.job, step.task), step.title, step.bag,
                        joined(hardware, "; "), step.routing, step.letOut, step.asFound, step.note,
                        yes(step.refitted.has_value())});
    }
}

void wires(const SheetJob& each, Rows& rows) {
    for (const wiring::Gathering& gathering : each.job.gatherings)
        for (const wiring::Place& place : gathering.held)
            for (const auto which :
                 {wiring::Answer::AsFound, wiring::Answer::AsItShouldBe, wiring::Answer::AsRefitted})
                if (const auto& answer = place.answer(which))
                    rows.push_back({each.job.number, gathering.title,
                                    std::string(wiring::code(place.key.half)),
                                    std::to_string(place.key.number), std::to_string(place.key.slot),
                                    std::string(wiring::code(which)), colour::code(answer->wire.colour),
                                    answer->wire.function, answer->source});
}

void parts(const SheetJob& each, Rows& rows) {
    for (const Part& part : each.job.parts)
        rows.push_back({each.job.number, part.name, part.number, part.otherNumbers, part.supplier,
                        std::string(code(part.state)), digits(part.price), unit(part.price),
                        std::string(code(part.fitted)), part.fit, part.note});
}

void readings(const SheetJob& each, Rows& rows) {
    for (const Reading& reading : each.job.readings)
        rows.push_back({each.job.number, reading.what, reading.value.digits, reading.value.unit,
                        reading.instrument, reading.uncertainty, quantity(reading.low),
                        quantity(reading.high), reading.limitSource, reading.verdict, day(reading.said.at)});
}

void memos(const SheetJob& each, Rows& rows) {
    for (const Memo& memo : each.job.memos)
        rows.push_back({each.job.number, memo.text, memo.media, day(memo.said.at)});
}

void rechecks(const SheetJob& each, Rows& rows) {
    for (const Recheck& recheck : each.job.rechecks)
        rows.push_back({each.job.number, recheck.what, quantity(recheck.after),
                        recheck.afterDays ? std::to_string(*recheck.afterDays) : std::string{},
                        yes(recheck.seen.has_value())});
}

struct Sheet {
    const char* name;
    CsvRow head;
    std::function<void(const SheetJob&, Rows&)> add;
};

const std::vector<Sheet>& allSheets() {
    static const std::vector<Sheet> all{
        {"machines.csv",
         {"job", "make", "model", "year", "frame number", "owner", "phone", "mail", "address", "reason",
          "odometer", "taken in", "handed over"},
         machines},
        {"findings.csv",
         {"job", "finding", "severity", "to do", "settled", "how", "refused by", "day"},
         findings},
        {"tasks.csv", {"job", "task", "waits for", "minutes", "finished"}, tasks},
        {"steps.csv",
         {"job", "task", "step", "bag", "hardware", "routing", "let out", "as found", "note", "refitted"},
         steps},
        {"wires.csv",
         {"job", "connector", "half", "place", "slot", "answer", "colour", "function", "source"},
         wires},
        {"parts.csv",
         {"job", "part", "number", "other numbers", "supplier", "state", "price", "currency", "fitted", "fit",
          "note"},
         parts},
        {"readings.csv",
         {"job", "reading", "value", "unit", "instrument", "uncertainty", "low", "high", "limit from",
          "verdict", "day"},
         readings},
        {"memos.csv", {"job", "memo", "sound", "day"}, memos},
        {"rechecks.csv", {"job", "recheck", "after", "days", "seen"}, rechecks}};
    return all;
}

} // namespace

std::vector<std::pair<std::string, std::string>> sheets(const std::vector<SheetJob>& jobs) {
    std::vector<std::pair<std::string, std::string>> files;
    for (const Sheet& sheet : allSheets()) {
        Rows rows{sheet.head};
        for (const SheetJob& each : jobs)
            sheet.add(each, rows);
        files.emplace_back(sheet.name, writeCsv(rows));
    }
    return files;
}

} // namespace undercowl::job
