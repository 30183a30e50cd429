#include "core/journal/apply.h"

#include "core/journal/applying.h"

#include <algorithm>
#include <array>
#include <utility>

namespace undercowl::journal {
namespace {

using job::Job;

constexpr std::int64_t largestPicture = 100'000; // pixels along one side
constexpr int longestMemoMs = 3'600'000;
constexpr std::size_t longestNumber = 40;                // letters
constexpr std::int64_t latestTime = 253'402'300'799'999; // end of the year 9999, in ms

void describeJob(Job& job, const Fields& body, const InForce& /*entry*/) {
    const auto odometer = typedIfAny(body, "odometer");
    const auto altitude = typedIfAny(body, "altitude");
    const auto rider = typedIfAny(body, "rider_mass");
    const auto luggage = typedIfAny(body, "luggage_mass");
    const std::array texts{std::pair{"number", &job.number},
                           std::pair{"machine", &job.machine},
                           std::pair{"owner", &job.owner},
                           std::pair{"reason", &job.reason},
                           std::pair{"works", &job.works},
                           std::pair{"works_not", &job.worksNot},
                           std::pair{"load", &job.load},
                           std::pair{"received", &job.received},
                           std::pair{"came_back_from", &job.cameBackFrom}};
    std::array<std::optional<std::string>, texts.size()> given;
    for (std::size_t i = 0; i < texts.size(); ++i)
        given.at(i) = body.textIfAny(texts.at(i).first);
    for (std::size_t i = 0; i < texts.size(); ++i)
        if (given.at(i))
            *texts.at(i).second = *given.at(i);
    if (odometer)
        job.odometer = odometer;
    if (altitude)
        job.altitude = altitude;
    if (rider)
        job.riderMass = rider;
    if (luggage)
        job.luggageMass = luggage;
}

void openJob(Job& job, const Fields& body, const InForce& entry) {
    describeJob(job, body, entry);
    if (job.opened.entry.empty())
        job.opened = said(entry);
}

void takePhoto(Job& job, const Fields& body, const InForce& entry) {
    job::Photo photo;
    photo.id = entry.first->subject;
    photo.media = body.text("media");
    photo.purpose = body.word("purpose", job::photoPurposeFromCode);
    photo.about = body.textOr("about");
    photo.note = body.textOr("note");
    photo.width = static_cast<int>(body.whole("width", 1, largestPicture));
    photo.height = static_cast<int>(body.whole("height", 1, largestPicture));
    photo.takenAt = body.whole("taken_at", 0, latestTime);
    photo.said = said(entry);
    putById(job.photos, std::move(photo));
}

void noteFinding(Job& job, const Fields& body, const InForce& entry) {
    job::Finding finding;
    finding.id = entry.first->subject;
    finding.text = body.text("text");
    finding.severity = body.word("severity", job::severityFromCode);
    finding.toDo = body.textOr("to_do");
    finding.minutes = minutesIfAny(body);
    finding.said = said(entry);
    putById(job.findings, std::move(finding));
}

void settleFinding(Job& job, const Fields& body, const InForce& entry) {
    const std::string how = body.textOr("how");
    if (auto* finding = byId(job.findings, entry.first->subject)) {
        finding->settled = true;
        finding->settledHow = how;
        finding->settledBy = entry.last->id;
    }
}

void nameTask(Job& job, const Fields& body, const InForce& entry) {
    job::Task task;
    task.id = entry.first->subject;
    task.title = body.text("title");
    task.after = texts(body, "after");
    task.minutes = minutesIfAny(body);
    task.finding = body.textOr("finding");
    task.order = static_cast<int>(job.tasks.size());
    if (const auto* old = byId(job.tasks, task.id)) {
        task.waiting = old->waiting;
        task.waitingFor = old->waitingFor;
        task.heldBy = old->heldBy;
        task.order = old->order;
        task.done = old->done;
    }
    putById(job.tasks, std::move(task));
}

void holdTask(Job& job, const Fields& body, const InForce& entry) {
    const std::string waitingFor = body.textOr("waiting_for");
    const auto heldBy = body.has("held_by") ? body.word("held_by", job::holdsFromCode) : job::Holds::NotSaid;
    if (auto* task = byId(job.tasks, entry.first->subject)) {
        task->waiting = true;
        task->waitingFor = waitingFor;
        task->heldBy = heldBy;
    }
}

void resumeTask(Job& job, const Fields& /*body*/, const InForce& entry) {
    if (auto* task = byId(job.tasks, entry.first->subject)) {
        task->waiting = false;
        task->waitingFor.clear();
        task->heldBy = job::Holds::NotSaid;
        task->done = false;
    }
}

void stripStep(Job& job, const Fields& body, const InForce& entry) {
    job::StripStep step;
    step.id = entry.first->subject;
    step.title = body.text("title");
    step.task = body.textOr("task");
    step.bag = body.textOr("bag");
    step.note = body.textOr("note");
    step.routing = body.textOr("routing");
    step.letOut = body.textOr("let_out");
    step.asFound = body.textOr("as_found");
    step.ends = body.textOr("ends");
    if (body.has("hardware"))
        for (const Json& item : body.list("hardware"))
            step.hardware.push_back(hardware(item));
    step.cautions = texts(body, "cautions");
    step.order = static_cast<int>(job.steps.size());
    step.said = said(entry);
    if (const auto* old = byId(job.steps, step.id)) {
        step.order = old->order;
        step.refitted = old->refitted;
        step.needs = old->needs;
        step.seenTo = old->seenTo;
        step.lineCheck = old->lineCheck;
    }
    putById(job.steps, std::move(step));
}

void refitStep(Job& job, const Fields& body, const InForce& entry) {
    const std::string note = body.textOr("note");
    if (auto* step = byId(job.steps, entry.first->subject))
        step->refitted = job::Refitted{said(entry), note};
}

void checkLine(Job& job, const Fields& body, const InForce& entry) {
    const job::LineCheck check{body.word("outcome", job::matchOutcomeFromCode), body.textOr("note"),
                               said(entry)};
    if (auto* step = byId(job.steps, entry.first->subject))
        step->lineCheck = check;
}

void describeGathering(Job& job, const Fields& body, const InForce& entry) {
    wiring::Gathering gathering;
    gathering.id = entry.first->subject;
    gathering.title = body.text("title");
    gathering.kind = body.word("kind", wiring::gatheringKindFromCode);
    gathering.places = static_cast<int>(body.whole("places", 1, 60));
    gathering.rows = static_cast<int>(body.whole("rows", 1, 6));
    gathering.seenFrom = body.word("seen_from", wiring::sideFromCode);
    gathering.latch = body.textOr("latch");
    gathering.photo = body.textOr("photo");
    gathering.step = body.textOr("step");
    gathering.condition = body.textOr("condition");
    gathering.treated = body.textOr("treated");
    gathering.replaces = body.textOr("replaces");
    if (body.has("first"))
        gathering.first = photoMark(body.child("first"));
    if (auto* old = byId(job.gatherings, gathering.id))
        gathering.held = std::move(old->held);
    putById(job.gatherings, std::move(gathering));
}

void answerWire(Job& job, const Fields& body, const InForce& entry) {
    const auto place = placeKey(body.child("place"));
    const auto which = body.word("answer", wiring::answerFromCode);
    wiring::PlaceAnswer answer;
    answer.wire = wire(body.child("wire"));
    answer.how = body.word("how", wiring::howKnownFromCode);
    answer.probability = body.number("probability", 0, 1);
    answer.source = body.textOr("source");
    if (body.has("mark"))
        answer.mark = photoMark(body.child("mark"));
    answer.entry = entry.last->id;
    if (auto* gathering = byId(job.gatherings, entry.first->subject)) {
        auto& at = gathering->at(place);
        at.answer(which) = std::move(answer);
        at.empty.at(static_cast<std::size_t>(which)) = false;
    }
}

void emptyPlace(Job& job, const Fields& body, const InForce& entry) {
    const auto place = placeKey(body.child("place"));
    const auto which = body.word("answer", wiring::answerFromCode);
    auto* gathering = byId(job.gatherings, entry.first->subject);
    const bool seen = flag(body, "seen");
    if (gathering == nullptr || (!seen && gathering->find(place) == nullptr))
        return;
    auto& at = gathering->at(place);
    at.answer(which).reset();
    at.empty.at(static_cast<std::size_t>(which)) = seen;
}

void tagWire(Job& job, const Fields& body, const InForce& entry) {
    const auto place = placeKey(body.child("place"));
    const std::string tag = body.textOr("tag");
    if (auto* gathering = byId(job.gatherings, entry.first->subject))
        gathering->at(place).tag = tag;
}

void checkWire(Job& job, const Fields& body, const InForce& entry) {
    job::WireCheck check;
    check.gathering = entry.first->subject;
    check.place = placeKey(body.child("place"));
    check.outcome = body.word("outcome", job::matchOutcomeFromCode);
    check.against = body.word("against", wiring::answerFromCode);
    check.note = body.textOr("note");
    check.said = said(entry);
    std::erase_if(job.wireChecks, [&](const job::WireCheck& old) {
        return old.gathering == check.gathering && old.place == check.place;
    });
    job.wireChecks.push_back(std::move(check));
}

void statePart(Job& job, const Fields& body, const InForce& entry) {
    job::Part part;
    part.id = entry.first->subject;
    part.name = body.text("name");
    part.state = body.word("state", job::partStateFromCode);
    part.number = body.textOr("number");
    part.note = body.textOr("note");
    part.about = body.textOr("about");
    part.supplier = body.textOr("supplier");
    part.otherNumbers = body.textOr("other_numbers");
    part.price = typedIfAny(body, "price");
    part.fit = body.textOr("fit");
    if (body.has("fitted"))
        part.fitted = body.word("fitted", job::partFitFromCode);
    part.said = said(entry);
    putById(job.parts, std::move(part));
}

void takeReading(Job& job, const Fields& body, const InForce& entry) {
    job::Reading reading;
    reading.id = entry.first->subject;
    reading.what = body.text("what");
    reading.value = typedValue(body.child("value"));
    if (body.has("readings"))
        for (const Json& one : body.list("readings")) {
            if (!one.is_string() || one.get_ref<const std::string&>().size() > longestNumber)
                throw ShapeError("readings: must be the digits of each as text");
            reading.repeated.push_back(one.get<std::string>());
        }
    reading.about = body.textOr("about");
    reading.instrument = body.textOr("instrument");
    reading.uncertainty = body.textOr("uncertainty");
    reading.low = typedIfAny(body, "low");
    reading.high = typedIfAny(body, "high");
    reading.limitSource = body.textOr("limit_source");
    reading.verdict = body.textOr("verdict");
    if (body.has("probability"))
        reading.probability = body.number("probability", 0, 1);
    reading.said = said(entry);
    putById(job.readings, std::move(reading));
}

void keepMemo(Job& job, const Fields& body, const InForce& entry) {
    job::Memo memo;
    memo.id = entry.first->subject;
    memo.media = body.textOr("media");
    memo.text = body.textOr("text");
    memo.about = body.textOr("about");
    if (body.has("marks"))
        for (const Json& one : body.list("marks")) {
            if (!one.is_number_integer() || one < 0 || one > longestMemoMs)
                throw ShapeError("marks: must be whole milliseconds within the sound");
            memo.marks.push_back(one.get<int>());
        }
    memo.said = said(entry);
    putById(job.memos, std::move(memo));
}

void noteRecheck(Job& job, const Fields& body, const InForce& entry) {
    job::Recheck recheck;
    recheck.id = entry.first->subject;
    recheck.what = body.text("what");
    recheck.after = typedIfAny(body, "after");
    if (body.has("after_days"))
        recheck.afterDays = static_cast<int>(body.whole("after_days", 0, 36'500));
    recheck.said = said(entry);
    if (const auto* old = byId(job.rechecks, recheck.id))
        recheck.seen = old->seen;
    putById(job.rechecks, std::move(recheck));
}

void handOver(Job& job, const Fields& body, const InForce& entry) {
    job.handedOver =
        job::HandedOver{body.textOr("note"), said(entry), body.textOr("old_parts"), body.textOr("waste")};
}

constexpr std::array kinds{
    Kind{"job.opened", openJob},
    Kind{"job.described", describeJob},
    Kind{"photo.taken", takePhoto},
    Kind{"finding.noted", noteFinding},
    Kind{"finding.settled", settleFinding},
    Kind{"task.named", nameTask},
    Kind{"task.held", holdTask},
    Kind{"task.resumed", resumeTask},
    Kind{"step.stripped", stripStep},
    Kind{"step.refitted", refitStep},
    Kind{"line.checked", checkLine},
    Kind{"gathering.described", describeGathering},
    Kind{"wire.answered", answerWire},
    Kind{"place.empty", emptyPlace},
    Kind{"wire.tagged", tagWire},
    Kind{"wire.checked", checkWire},
    Kind{"part.stated", statePart},
    Kind{"reading.taken", takeReading},
    Kind{"memo.kept", keepMemo},
    Kind{"recheck.due", noteRecheck},
    Kind{"job.handed-over", handOver},
};

} // namespace

ApplyToJob applyToJob(std::string_view kind) {
    const auto found =
        std::find_if(kinds.begin(), kinds.end(), [kind](const Kind& k) { return k.name == kind; });
    return found == kinds.end() ? applyToWork(kind) : found->apply;
}

job::Machine readMachine(const Id& id, const Fields& body) {
    job::Machine machine;
    machine.id = id;
    machine.make = body.textOr("make");
    machine.model = body.textOr("model");
    if (body.has("year"))
        machine.year = static_cast<int>(body.whole("year", 1880, 2200));
    machine.frameNumber = body.textOr("frame_number");
    machine.notes = body.textOr("notes");
    return machine;
}

job::Owner readOwner(const Id& id, const Fields& body) {
    job::Owner owner;
    owner.id = id;
    owner.name = body.textOr("name");
    owner.phone = body.textOr("phone");
    owner.mail = body.textOr("mail");
    owner.address = body.textOr("address");
    return owner;
}

job::Mechanic readMechanic(const Id& id, const Fields& body) {
    return {id, body.text("name")};
}

} // namespace undercowl::journal
