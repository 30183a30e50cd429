#include "core/journal/say.h"

#include "core/journal/body.h"
#include "core/journal/saying.h"

namespace undercowl::journal {
namespace {

Json placed(const wiring::PlaceKey& place) {
    return {{"place", toJson(place)}};
}

void putIfSaid(Json& body, const char* name, const std::optional<std::string>& text) {
    if (text)
        body[name] = *text;
}

Json patchBody(const JobPatch& patch) {
    Json body = Json::object();
    putIfSaid(body, "number", patch.number);
    putIfSaid(body, "reason", patch.reason);
    putIfSaid(body, "works", patch.works);
    putIfSaid(body, "works_not", patch.worksNot);
    putIfSaid(body, "load", patch.load);
    putIfSaid(body, "received", patch.received);
    putIfSaid(body, "machine", patch.machine);
    putIfSaid(body, "owner", patch.owner);
    putIfSaid(body, "came_back_from", patch.cameBackFrom);
    put(body, "odometer", patch.odometer);
    put(body, "altitude", patch.altitude);
    put(body, "rider_mass", patch.riderMass);
    put(body, "luggage_mass", patch.luggageMass);
    return body;
}

} // namespace

Draft mechanicNamed(const job::Mechanic& mechanic) {
    return draft("mechanic.named", std::string(shopStream), mechanic.id, {{"name", mechanic.name}});
}

Draft machineDescribed(const job::Machine& machine) {
    Json body = Json::object();
    put(body, "make", machine.make);
    put(body, "model", machine.model);
    if (machine.year)
        body["year"] = *machine.year;
    put(body, "frame_number", machine.frameNumber);
    put(body, "notes", machine.notes);
    return draft("machine.described", machine.id, machine.id, body);
}

Draft ownerDescribed(const job::Owner& owner) {
    Json body = Json::object();
    put(body, "name", owner.name);
    put(body, "phone", owner.phone);
    put(body, "mail", owner.mail);
    put(body, "address", owner.address);
    return draft("owner.described", owner.id, owner.id, body);
}

Draft jobOpened(const Id& job, const JobPatch& first) {
    return draft("job.opened", job, job, patchBody(first));
}

Draft jobDescribed(const Id& job, const JobPatch& patch) {
    return draft("job.described", job, job, patchBody(patch));
}

Draft photoTaken(const Id& job, const job::Photo& photo, const Id& supersedes) {
    Json body{{"media", photo.media},
              {"purpose", job::code(photo.purpose)},
              {"width", photo.width},
              {"height", photo.height},
              {"taken_at", photo.takenAt}};
    put(body, "about", photo.about);
    put(body, "note", photo.note);
    return draft("photo.taken", job, photo.id, body, supersedes);
}

Draft findingNoted(const Id& job, const job::Finding& finding, const Id& supersedes) {
    Json body{{"text", finding.text}, {"severity", job::code(finding.severity)}};
    put(body, "to_do", finding.toDo);
    if (finding.minutes)
        body["minutes"] = *finding.minutes;
    return draft("finding.noted", job, finding.id, body, supersedes);
}

Draft findingSettled(const Id& job, const Id& finding, const std::string& how) {
    return draft("finding.settled", job, finding, {{"how", how}});
}

Draft taskNamed(const Id& job, const job::Task& task, const Id& supersedes) {
    Json body{{"title", task.title}};
    put(body, "after", task.after);
    put(body, "finding", task.finding);
    if (task.minutes)
        body["minutes"] = *task.minutes;
    return draft("task.named", job, task.id, body, supersedes);
}

Draft taskHeld(const Id& job, const Id& task, const std::string& waitingFor, job::Holds heldBy) {
    Json body{{"waiting_for", waitingFor}};
    if (heldBy != job::Holds::NotSaid)
        body["held_by"] = job::code(heldBy);
    return draft("task.held", job, task, body);
}

Draft taskResumed(const Id& job, const Id& task) {
    return draft("task.resumed", job, task, Json::object());
}

Draft stepStripped(const Id& job, const job::StripStep& step, const Id& supersedes) {
    Json body{{"title", step.title}};
    put(body, "task", step.task);
    put(body, "bag", step.bag);
    put(body, "note", step.note);
    put(body, "routing", step.routing);
    put(body, "let_out", step.letOut);
    put(body, "as_found", step.asFound);
    put(body, "ends", step.ends);
    for (const job::Hardware& hardware : step.hardware)
        body["hardware"].push_back(toJson(hardware));
    for (const std::string& caution : step.cautions)
        body["cautions"].push_back(caution);
    return draft("step.stripped", job, step.id, body, supersedes);
}

Draft stepRefitted(const Id& job, const Id& step, const std::string& note) {
    Json body = Json::object();
    put(body, "note", note);
    return draft("step.refitted", job, step, body);
}

Draft lineChecked(const Id& job, const Id& step, job::MatchOutcome outcome, const std::string& note) {
    Json body{{"outcome", job::code(outcome)}};
    put(body, "note", note);
    return draft("line.checked", job, step, body);
}

Draft gatheringDescribed(const Id& job, const wiring::Gathering& gathering, const Id& supersedes) {
    Json body{{"title", gathering.title},
              {"kind", wiring::code(gathering.kind)},
              {"places", gathering.places},
              {"rows", gathering.rows},
              {"seen_from", wiring::code(gathering.seenFrom)}};
    put(body, "latch", gathering.latch);
    put(body, "photo", gathering.photo);
    put(body, "step", gathering.step);
    put(body, "condition", gathering.condition);
    put(body, "treated", gathering.treated);
    put(body, "replaces", gathering.replaces);
    put(body, "first", gathering.first);
    return draft("gathering.described", job, gathering.id, body, supersedes);
}

Draft wireAnswered(const Id& job, const Id& gathering, wiring::PlaceKey place, wiring::Answer which,
                   const wiring::PlaceAnswer& answer) {
    Json body = placed(place);
    body["answer"] = wiring::code(which);
    body["wire"] = toJson(answer.wire);
    body["how"] = wiring::code(answer.how);
    body["probability"] = answer.probability;
    put(body, "source", answer.source);
    put(body, "mark", answer.mark);
    return draft("wire.answered", job, gathering, body);
}

Draft placeEmpty(const Id& job, const Id& gathering, wiring::PlaceKey place, wiring::Answer which,
                 bool seen) {
    Json body = placed(place);
    body["answer"] = wiring::code(which);
    if (seen)
        body["seen"] = true;
    return draft("place.empty", job, gathering, body);
}

Draft wireTagged(const Id& job, const Id& gathering, wiring::PlaceKey place, const std::string& tag) {
    Json body = placed(place);
    body["tag"] = tag;
    return draft("wire.tagged", job, gathering, body);
}

Draft wireChecked(const Id& job, const job::WireCheck& check) {
    Json body = placed(check.place);
    body["outcome"] = job::code(check.outcome);
    body["against"] = wiring::code(check.against);
    put(body, "note", check.note);
    return draft("wire.checked", job, check.gathering, body);
}

Draft partStated(const Id& job, const job::Part& part) {
    Json body{{"name", part.name}, {"state", job::code(part.state)}};
    put(body, "number", part.number);
    put(body, "note", part.note);
    put(body, "about", part.about);
    put(body, "supplier", part.supplier);
    put(body, "other_numbers", part.otherNumbers);
    put(body, "price", part.price);
    put(body, "fit", part.fit);
    if (part.fitted != job::PartFit::NotSaid)
        body["fitted"] = job::code(part.fitted);
    return draft("part.stated", job, part.id, body);
}

Draft readingTaken(const Id& job, const job::Reading& reading, const Id& supersedes) {
    Json body{{"what", reading.what}, {"value", toJson(reading.value)}};
    if (!reading.repeated.empty())
        body["readings"] = reading.repeated;
    put(body, "about", reading.about);
    put(body, "instrument", reading.instrument);
    put(body, "uncertainty", reading.uncertainty);
    put(body, "low", reading.low);
    put(body, "high", reading.high);
    put(body, "limit_source", reading.limitSource);
    put(body, "verdict", reading.verdict);
    if (reading.probability)
        body["probability"] = *reading.probability;
    return draft("reading.taken", job, reading.id, body, supersedes);
}

Draft memoKept(const Id& job, const job::Memo& memo, const Id& supersedes) {
    Json body = Json::object();
    put(body, "media", memo.media);
    put(body, "text", memo.text);
    put(body, "about", memo.about);
    if (!memo.marks.empty())
        body["marks"] = memo.marks;
    return draft("memo.kept", job, memo.id, body, supersedes);
}

Draft recheckDue(const Id& job, const job::Recheck& recheck, const Id& supersedes) {
    Json body{{"what", recheck.what}};
    put(body, "after", recheck.after);
    if (recheck.afterDays)
        body["after_days"] = *recheck.afterDays;
    return draft("recheck.due", job, recheck.id, body, supersedes);
}

Draft jobHandedOver(const Id& job, const std::string& note, const std::string& oldParts,
                    const std::string& waste) {
    Json body = Json::object();
    put(body, "note", note);
    put(body, "old_parts", oldParts);
    put(body, "waste", waste);
    return draft("job.handed-over", job, job, body);
}

Draft withdrawn(const Id& stream, const Id& entry) {
    return draft("entry.withdrawn", stream, entry, Json::object());
}

} // namespace undercowl::journal
