#include "core/job/leaving.h"

#include "core/job/complaints.h"
#include "core/job/needs.h"
#include "core/job/proving.h"
#include "core/job/readings.h"
#include "core/job/safety.h"
#include "core/job/worktime.h"

#include <algorithm>
#include <array>

namespace undercowl::job {
namespace {

void addFindings(const Job& job, std::vector<Against>& found) {
    for (const Finding& finding : job.findings) {
        if (finding.severity != Severity::Unsafe || finding.settled)
            continue;
        if (finding.refused)
            found.push_back({Weighs::Warns,
                             {"leave.refused", {finding.refused->by, finding.text}},
                             finding.id,
                             Against::Way::None,
                             {}});
        else
            found.push_back({Weighs::Stops,
                             {"leave.unsafe", {finding.text}},
                             finding.id,
                             Against::Way::SettleOrRefuse,
                             {}});
    }
}

void addBans(const Job& job, std::vector<Against>& found) {
    for (const Banned& banned : bans(job)) {
        const bool start = banned.ban == Ban::Start;
        if (banned.apart) {
            found.push_back({Weighs::Tells,
                             {start ? "leave.start-apart" : "leave.ride-apart", {banned.step->title}},
                             banned.step->id,
                             Against::Way::None,
                             {}});
            continue;
        }
        for (const std::string& what : banned.missing) {
            const SeenTo* seen = seenTo(*banned.step, what);
            const auto same = [&](const Against& other) {
                return other.subject == banned.step->id && other.what == what;
            };
            if (std::any_of(found.begin(), found.end(), same))
                continue; // keeps it from starting as well
            if (seen != nullptr)
                found.push_back({Weighs::Warns,
                                 {"leave.left-out", {what, seen->note}},
                                 banned.step->id,
                                 Against::Way::SeeTo,
                                 what});
            else
                found.push_back({Weighs::Stops,
                                 {start ? "leave.start" : "leave.ride", {what, banned.step->title}},
                                 banned.step->id,
                                 Against::Way::SeeTo,
                                 what});
        }
    }
}

// What was disturbed and is on again has to be proved, or it is recorded why not.
void addProofs(const Job& job, std::vector<Against>& found) {
    for (const ToProve& proof : toProve(job)) {
        if (proof.kind == ProofKind::Afterwards || proof.apart)
            continue; // see addBans and addOpenWork
        if (proof.state == ToProve::State::Open)
            found.push_back({Weighs::Stops,
                             proof.against.empty()
                                 ? Message{"leave.unproved", {english(proof.words)}}
                                 : Message{"leave.contradicted", {english(proof.words), againstText(proof)}},
                             proof.subject,
                             proof.against.empty()            ? Against::Way::Prove
                             : proof.kind == ProofKind::Wires ? Against::Way::ReadWires
                                                              : Against::Way::Measure,
                             proof.what});
        else if (proof.state == ToProve::State::LeftOut)
            found.push_back({Weighs::Warns,
                             {"leave.proof-left-out", {english(proof.words), proof.note}},
                             proof.subject,
                             Against::Way::Prove,
                             proof.what});
    }
}

// The owner was told of the same thing and does not want it put right.
bool refusedByOwner(const Job& job, const Reading& reading) {
    return std::any_of(job.findings.begin(), job.findings.end(), [&](const Finding& finding) {
        return finding.severity == Severity::Unsafe && !finding.settled && finding.refused &&
               nameTheSame(finding.text, reading.what);
    });
}

// Of other matters it may leave: what it means is the mechanic's to say, by a finding. A torque of a step
// stands with its proof.
void addReadings(const Job& job, std::vector<Against>& found) {
    for (const Reading& reading : job.readings) {
        const bool outside = reading.verdict == "outside";
        if ((!outside && reading.verdict != "too close to call") || measuredAgain(job, reading))
            continue;
        if (std::any_of(found.begin(), found.end(), [&](const Against& other) {
                return other.way == Against::Way::Measure && other.subject == reading.about &&
                       other.what == code(ProofKind::Torque);
            }))
            continue;
        const bool grave = outside && concernsSafety(reading.what);
        const bool refused = grave && refusedByOwner(job, reading);
        found.push_back({refused ? Weighs::Asks
                         : grave ? Weighs::Stops
                                 : Weighs::Warns,
                         {refused   ? "leave.outside-refused"
                          : outside ? "leave.outside"
                                    : "leave.close",
                          {reading.what, reading.value.digits + " " + reading.value.unit}},
                         reading.about,
                         Against::Way::Measure,
                         {}});
    }
}

void addParts(const Job& job, std::vector<Against>& found) {
    for (const Part& part : job.parts)
        if (outstanding(part))
            found.push_back({Weighs::Asks, {"leave.part", {part.name}}, part.id, Against::Way::Fit, {}});
}

void addComplaints(const Job& job, std::vector<Against>& found) {
    for (const Complaint& complaint : complaints(job)) {
        const auto add = [&](Weighs weighs, Message why) {
            found.push_back({weighs, std::move(why), {}, Against::Way::Answer, complaint.what});
        };
        if (complaint.open())
            add(Weighs::Asks, {complaint.owners ? "leave.complaint" : "leave.function", {complaint.what}});
        else if (complaint.answer->answer == FunctionAnswer::NotTried)
            add(Weighs::Warns, {"leave.left", {complaint.what, complaint.answer->note}});
    }
    for (const FunctionCheck& check : job.functionsAfter)
        if (check.answer == FunctionAnswer::DoesNot)
            found.push_back({Weighs::Warns,
                             check.note.empty() ? Message{"leave.works-not", {check.what}}
                                                : Message{"leave.works-not-note", {check.what, check.note}},
                             {},
                             Against::Way::Answer,
                             check.what});
}

// A hose or cable that was read back and does not run as it was found may be caught, kinked or crossed: the
// bars then hold the throttle open. It is put right and read back again.
void addLines(const Job& job, std::vector<Against>& found) {
    for (const StripStep& step : job.steps)
        if (step.lineCheck && step.lineCheck->outcome == MatchOutcome::DoesNotMatch)
            found.push_back(
                {Weighs::Stops, {"leave.line", {step.title}}, step.id, Against::Way::ReadBack, {}});
}

void addOpenWork(const Job& job, std::vector<Against>& found) {
    for (const Afterwards& open : openAfterwards(job))
        if (std::none_of(found.begin(), found.end(), [&](const Against& other) {
                return other.subject == open.step->id && other.what == open.what;
            }))
            found.push_back({Weighs::Stops,
                             {"leave.afterwards", {open.what, open.step->title}},
                             open.step->id,
                             Against::Way::SeeTo,
                             open.what});
    for (const Round& round : job.rounds) {
        const auto open = std::count_if(round.checks.begin(), round.checks.end(),
                                        [](const RoundCheck& check) { return !check.answer; });
        if (open > 0)
            found.push_back({Weighs::Warns,
                             {"leave.not-looked", {round.title, std::to_string(open)}},
                             round.id,
                             Against::Way::None,
                             {}});
    }
    for (const WorkSpan* span : running(job)) {
        const Task* task = findTask(job, span->task);
        found.push_back({Weighs::Warns,
                         {"leave.watch", {task != nullptr ? task->title : job.number}},
                         span->id,
                         Against::Way::None,
                         {}});
    }
}

} // namespace

std::vector<Against> againstLeaving(const Job& job) {
    std::vector<Against> found;
    addFindings(job, found);
    addBans(job, found);
    addProofs(job, found);
    addReadings(job, found);
    addLines(job, found);
    addParts(job, found);
    addComplaints(job, found);
    addOpenWork(job, found);
    std::stable_sort(found.begin(), found.end(),
                     [](const Against& a, const Against& b) { return a.weighs < b.weighs; });
    return found;
}

bool mayLeave(const Job& job) {
    const auto found = againstLeaving(job);
    return std::none_of(found.begin(), found.end(),
                        [](const Against& against) { return against.weighs == Weighs::Stops; });
}

std::vector<std::string> leftOpen(const Job& job) {
    std::vector<std::string> left;
    for (const Part& part : job.parts)
        if (outstanding(part))
            left.push_back(part.name);
    for (const Banned& banned : bans(job))
        if (banned.apart && std::find(left.begin(), left.end(), banned.step->title) == left.end())
            left.push_back(banned.step->title);
    for (const Finding& finding : job.findings)
        if (finding.severity == Severity::Unsafe && !finding.settled)
            left.push_back(finding.text);
    for (const FunctionCheck& check : job.functionsAfter)
        if (check.answer == FunctionAnswer::DoesNot)
            left.push_back(check.what);
    return left;
}

std::string_view code(Weighs weighs) {
    constexpr std::array<std::string_view, 4> codes{"stops", "tells", "asks", "warns"};
    return codes.at(static_cast<std::size_t>(weighs));
}

} // namespace undercowl::job
