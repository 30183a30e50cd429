#include "platform/demo/story.h"

#include "platform/demo/ending.h"
#include "platform/demo/judge.h"

#include "core/job/cautions.h"
#include "core/journal/saywork.h"
#include "core/sight/photo.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <stdexcept>
#include <utility>

namespace undercowl::demo {
namespace {

using journal::Draft;
using Number = const std::string&;

job::Id about(Number number, const Json& saying) {
    const std::string key = text(saying, "about");
    return key.empty() ? job::Id{} : Teller::id(number, key);
}

std::string keyOf(const Json& saying, std::string_view name) {
    const std::string key = text(saying, "key");
    return key.empty() ? text(saying, name) : key;
}

Draft finding(Number number, const Json& saying) {
    job::Finding finding;
    finding.id = Teller::id(number, keyOf(saying, "finding"));
    finding.text = text(saying, "finding");
    finding.severity = job::severityFromCode(text(saying, "severity")).value_or(job::Severity::Note);
    finding.toDo = text(saying, "to do");
    return journal::findingNoted(Teller::id(number, ""), finding);
}

Draft settle(Number number, const Json& saying) {
    return journal::findingSettled(Teller::id(number, ""), Teller::id(number, text(saying, "settle")),
                                   text(saying, "how"));
}

Draft task(Number number, const Json& saying) {
    job::Task task;
    task.id = Teller::id(number, keyOf(saying, "task"));
    task.title = text(saying, "task");
    if (saying.contains("after"))
        for (const Json& before : saying.at("after"))
            task.after.push_back(Teller::id(number, before.get<std::string>()));
    return journal::taskNamed(Teller::id(number, ""), task);
}

Draft hold(Number number, const Json& saying) {
    return journal::taskHeld(Teller::id(number, ""), Teller::id(number, text(saying, "hold")),
                             text(saying, "for"),
                             job::holdsFromCode(text(saying, "by")).value_or(job::Holds::NotSaid));
}

Draft strip(Number number, const Json& saying) {
    job::StripStep step;
    step.id = Teller::id(number, keyOf(saying, "strip"));
    step.title = text(saying, "strip");
    if (const std::string task = text(saying, "task"); !task.empty())
        step.task = Teller::id(number, task);
    step.bag = text(saying, "bag");
    step.note = text(saying, "note");
    step.asFound = text(saying, "as found");
    step.routing = text(saying, "routing");
    step.ends = text(saying, "ends");
    step.letOut = text(saying, "let out");
    step.cautions = job::cautionsFor(step.title);
    if (saying.contains("hardware"))
        for (const Json& each : saying.at("hardware")) {
            job::Hardware hardware;
            hardware.count = each.value("count", 1);
            hardware.what = text(each, "what");
            hardware.thread = text(each, "thread");
            hardware.length = text(each, "length");
            hardware.torque = value(each, "torque");
            if (each.contains("at"))
                for (const Json& mark : each.at("at"))
                    hardware.at.push_back({Teller::id(number, "photo " + text(each, "photo")),
                                           mark.at(0).get<double>(), mark.at(1).get<double>()});
            step.hardware.push_back(std::move(hardware));
        }
    return journal::stepStripped(Teller::id(number, ""), step);
}

Draft refit(Number number, const Json& saying) {
    return journal::stepRefitted(Teller::id(number, ""), Teller::id(number, text(saying, "refit")),
                                 text(saying, "note"));
}

Draft part(Number number, const Json& saying) {
    job::Part part;
    part.id = Teller::id(number, keyOf(saying, "part"));
    part.name = text(saying, "part");
    part.number = text(saying, "number");
    part.state = job::partStateFromCode(text(saying, "state")).value_or(job::PartState::Wanted);
    part.about = about(number, saying);
    part.supplier = text(saying, "supplier");
    part.otherNumbers = text(saying, "other numbers");
    part.price = value(saying, "price");
    part.fitted = job::partFitFromCode(text(saying, "fitted")).value_or(job::PartFit::NotSaid);
    part.fit = text(saying, "fit");
    return journal::partStated(Teller::id(number, ""), part);
}

Draft reading(Number number, const Json& saying) {
    job::Reading reading;
    reading.id = Teller::id(number, keyOf(saying, "reading"));
    reading.what = text(saying, "reading");
    reading.about = about(number, saying);
    reading.value = value(saying, "value").value_or(job::TypedValue{});
    reading.instrument = text(saying, "instrument");
    reading.uncertainty = text(saying, "uncertainty");
    reading.low = value(saying, "low");
    reading.high = value(saying, "high");
    reading.limitSource = text(saying, "source");
    if (const auto judged = judge(reading, text(saying, "kind")); !judged)
        throw std::invalid_argument(reading.what + ": " + judged.error());
    return journal::readingTaken(Teller::id(number, ""), reading);
}

Draft memo(Number number, const Json& saying) {
    job::Memo memo;
    memo.id = Teller::id(number, keyOf(saying, "memo"));
    memo.text = text(saying, "memo");
    memo.about = about(number, saying);
    return journal::memoKept(Teller::id(number, ""), memo);
}

Draft recheck(Number number, const Json& saying) {
    job::Recheck recheck;
    recheck.id = Teller::id(number, keyOf(saying, "recheck"));
    recheck.what = text(saying, "recheck");
    recheck.after = value(saying, "after");
    if (saying.contains("days"))
        recheck.afterDays = saying.at("days").get<int>();
    return journal::recheckDue(Teller::id(number, ""), recheck);
}

Draft handOver(Number number, const Json& saying) {
    return journal::jobHandedOver(Teller::id(number, ""), text(saying, "hand over"));
}

Draft see(Number number, const Json& saying) {
    return journal::refitSeenTo(Teller::id(number, ""), Teller::id(number, text(saying, "see")),
                                text(saying, "what"));
}

Draft refuse(Number number, const Json& saying) {
    return journal::findingRefused(Teller::id(number, ""), Teller::id(number, text(saying, "refuse")),
                                   {text(saying, "by"), text(saying, "how"), text(saying, "note"), {}});
}

Draft approve(Number number, const Json& saying) {
    job::Approval approval;
    approval.id = Teller::id(number, keyOf(saying, "approve"));
    approval.what = text(saying, "approve");
    approval.given = true;
    approval.by = text(saying, "by");
    approval.how = text(saying, "how");
    approval.sum = value(saying, "sum");
    return journal::approvalAsked(Teller::id(number, ""), approval);
}

Draft function(Number number, const Json& saying) {
    return journal::functionChecked(
        Teller::id(number, ""),
        {text(saying, "function"),
         job::functionAnswerFromCode(text(saying, "answer")).value_or(job::FunctionAnswer::NotTried),
         text(saying, "note"),
         {}});
}

// A watch that was started and stopped; both are told by one saying, see tell().
Draft work(Number number, const Json& saying) {
    return journal::timeStarted(Teller::id(number, ""), Teller::id(number, keyOf(saying, "work")),
                                Teller::id(number, text(saying, "work")));
}

struct Kind {
    std::string_view name; // the member that tells the kind of a saying
    Draft (*say)(Number, const Json&);
};

// Looked through in this order: a strip step names its task too, so "strip" comes before "task".
constexpr std::array kinds{
    Kind{"finding", finding},    Kind{"settle", settle},      Kind{"strip", strip},
    Kind{"task", task},          Kind{"hold", hold},          Kind{"refit", refit},
    Kind{"part", part},          Kind{"reading", reading},    Kind{"memo", memo},
    Kind{"recheck", recheck},    Kind{"hand over", handOver}, Kind{"see", see},
    Kind{"refuse", refuse},      Kind{"approve", approve},    Kind{"work", work},
    Kind{"function", function},  Kind{"prove", proof},        Kind{"seconded", seconded},
    Kind{"ridden", ridden},      Kind{"cost", cost},          Kind{"works now", worksNow},
    Kind{"rechecked", rechecked}};

const Json* jobNamed(const Json& shop, Number number) {
    for (const Json& job : shop.at("jobs"))
        if (text(job, "number") == number)
            return &job;
    return nullptr;
}

} // namespace

job::Id Teller::id(const std::string& number, const std::string& key) {
    return idOf("job " + number + " " + key);
}

store::Result<std::vector<Draft>> Teller::open(const std::string& number) {
    const Json* found = jobNamed(shop_, number);
    if (found == nullptr)
        return refused(fmt::format("shop.json: no job has the number {}", number));
    const Json& about = found->at("machine");
    job::Machine machine;
    machine.id = id(number, "machine");
    machine.make = text(about, "make");
    machine.model = text(about, "model");
    if (about.contains("year"))
        machine.year = about.at("year").get<int>();
    machine.frameNumber = text(about, "frame");
    machine.notes = text(about, "notes");
    const Json& person = found->at("owner");
    const job::Owner owner{id(number, "owner"), text(person, "name"), text(person, "phone"),
                           text(person, "mail"), text(person, "address")};
    journal::JobPatch first;
    first.number = number;
    first.machine = machine.id;
    first.owner = owner.id;
    first.reason = text(*found, "reason");
    first.works = text(*found, "works");
    first.worksNot = text(*found, "works not");
    first.load = text(*found, "load");
    first.odometer = value(*found, "odometer");
    first.altitude = value(*found, "altitude");
    return std::vector{journal::machineDescribed(machine), journal::ownerDescribed(owner),
                       journal::jobOpened(id(number, ""), first)};
}

store::Result<std::vector<Draft>> Teller::photo(const std::string& number, const Json& saying) {
    const std::filesystem::path file = assets_ / text(saying, "photo");
    const auto bytes = readBytes(file);
    if (!bytes)
        return tl::unexpected(bytes.error());
    const auto decoded = sight::Photo::decode(*bytes);
    if (!decoded)
        return refused(fmt::format("{}: {}", file.string(), decoded.error().message));
    const auto kept = store_.keepMedia(*bytes, "jpg");
    if (!kept)
        return tl::unexpected(kept.error());
    job::Photo photo;
    photo.id = id(number, "photo " + text(saying, "photo") + text(saying, "purpose"));
    photo.media = kept->name;
    photo.purpose = job::photoPurposeFromCode(text(saying, "purpose")).value_or(job::PhotoPurpose::Other);
    photo.about = about(number, saying);
    photo.note = text(saying, "note");
    photo.width = decoded->width();
    photo.height = decoded->height();
    photo.takenAt = store_.now();
    return std::vector{journal::photoTaken(id(number, ""), photo)};
}

store::Result<std::vector<Draft>> Teller::tell(const std::string& number, const Json& saying) {
    if (saying.contains("open"))
        return open(number);
    if (saying.contains("photo"))
        return photo(number, saying);
    if (saying.contains("round"))
        return toldRound(number, saying);
    if (saying.contains("matches"))
        return toldMatches(number, saying);
    if (saying.contains("map"))
        return toldMap(number, saying);
    if (saying.contains("sign"))
        return toldSignature(store_, assets_, number, saying);
    const auto kind = std::find_if(kinds.begin(), kinds.end(),
                                   [&](const Kind& each) { return saying.contains(each.name); });
    if (kind == kinds.end())
        return refused(fmt::format("shop.json: nothing known is said by {}", saying.dump()));
    std::vector said{kind->say(number, saying)};
    if (saying.contains("work"))
        said.push_back(journal::timeStopped(id(number, ""), id(number, keyOf(saying, "work")),
                                            saying.at("minutes").get<int>()));
    return said;
}

} // namespace undercowl::demo
