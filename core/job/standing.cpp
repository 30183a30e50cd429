#include "core/job/standing.h"

#include "core/job/leaving.h"
#include "core/job/needs.h"
#include "core/job/refit.h"
#include "core/job/text.h"
#include "core/job/wires.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <functional>
#include <optional>
#include <utility>

namespace undercowl::job {
namespace {

bool startsWith(const std::string& text, std::string_view head) {
    return text.rfind(head, 0) == 0;
}

bool inForce(const HistoryLine& line) {
    return !line.withdrawn && line.kind != "entry.withdrawn";
}

const HistoryLine* lastInForce(const Job& job) {
    const auto last = std::find_if(job.history.rbegin(), job.history.rend(), inForce);
    return last == job.history.rend() ? nullptr : &*last;
}

template<typename T>
const T* subjectOf(const std::vector<T>& items, const Id& id) {
    const auto found = std::find_if(items.begin(), items.end(), [&](const T& item) { return item.id == id; });
    return found == items.end() ? nullptr : &*found;
}

// None for what is no work on the machine: a memo, a description, a task.
std::optional<Message> workOf(const Job& job, const HistoryLine& line) {
    if (startsWith(line.kind, "job.handed-over"))
        return Message{"standing.stopped.handed-over", {}};
    if (const auto* step = subjectOf(job.steps, line.subject))
        return Message{step->refitted && line.kind == "step.refitted" ? "standing.stopped.refit"
                                                                      : "standing.stopped.strip",
                       {step->title}};
    if (const auto* finding = subjectOf(job.findings, line.subject))
        return Message{"standing.stopped.finding", {finding->text}};
    if (const auto* gathering = subjectOf(job.gatherings, line.subject))
        return Message{"standing.stopped.wire", {gathering->title}};
    if (const auto* reading = subjectOf(job.readings, line.subject))
        return Message{"standing.stopped.reading", {reading->what}};
    if (const auto* part = subjectOf(job.parts, line.subject))
        return Message{"standing.stopped.part", {part->name}};
    if (const auto* photo = subjectOf(job.photos, line.subject)) {
        if (const auto* step = findStep(job, photo->about))
            return Message{"standing.stopped.strip", {step->title}};
        return Message{"standing.stopped.photo", {}};
    }
    return std::nullopt;
}

// A memo after three steps does not mean that nothing was done: the last work is looked for.
Message stoppedAfter(const Job& job) {
    for (auto line = job.history.rbegin(); line != job.history.rend(); ++line)
        if (inForce(*line))
            if (auto work = workOf(job, *line))
                return *std::move(work);
    return {"standing.stopped.nothing", {}};
}

// Stripping goes on until the first step is refitted: only the mechanic knows when it has come far enough.
bool refitBegun(const Job& job) {
    return std::any_of(job.steps.begin(), job.steps.end(),
                       [](const auto& step) { return step.refitted.has_value(); });
}

// All is on again: what is not as it should be all the same.
std::optional<Message> notRight(const Job& job) {
    std::vector<std::string> wires;
    for (const wiring::Gathering& gathering : job.gatherings)
        if (!wiresLeft(job, gathering).off.empty())
            wires.push_back(gathering.title);
    if (!wires.empty())
        return Message{"standing.next.wires", {listed(wires)}};
    std::vector<std::string> parts;
    for (const Part& part : job.parts)
        if (outstanding(part))
            parts.push_back(part.name);
    if (!parts.empty())
        return Message{"standing.next.part", {listed(parts)}};
    return std::nullopt;
}

void decideNext(const Job& job, Standing& standing) {
    if (job.handedOver) {
        standing.moment = Moment::Done;
        const std::string left = listed(leftOpen(job));
        standing.next =
            left.empty() ? Message{"standing.next.done", {}} : Message{"standing.next.left", {left}};
        return;
    }
    const auto open = [](const StripStep& step) { return !step.refitted; };
    if (std::any_of(job.steps.begin(), job.steps.end(), open)) {
        if (const auto next = nextRefit(job)) {
            const StripStep& step = *next->strip;
            standing.stepId = step.id;
            standing.moment = refitBegun(job) ? Moment::Refit : Moment::Strip;
            if (standing.moment == Moment::Strip)
                standing.next = {"standing.next.strip", {step.title}};
            else if (step.bag.empty())
                standing.next = {"standing.next.refit", {step.title}};
            else
                standing.next = {"standing.next.refit-bag", {step.title, step.bag}};
            return;
        }
        standing.moment = Moment::Wait;
        std::string waits;
        for (const Task& task : job.tasks)
            if (task.waiting)
                waits +=
                    (waits.empty() ? "" : ", ") + (task.waitingFor.empty() ? task.title : task.waitingFor);
        standing.next = {"standing.next.wait", {waits}};
        return;
    }
    if (job.steps.empty()) {
        standing.moment = job.photos.empty() ? Moment::TakeIn : Moment::LookOver;
        standing.next = {job.photos.empty() ? "standing.next.take-in" : "standing.next.look-over", {}};
        return;
    }
    for (const Finding& finding : job.findings)
        if (finding.severity == Severity::Unsafe && !finding.settled && !finding.refused) {
            standing.moment = Moment::Prove;
            standing.next = {"standing.next.unsafe", {finding.text}};
            return;
        }
    if (const auto left = openAfterwards(job); !left.empty()) {
        standing.moment = Moment::Prove;
        standing.stepId = left.front().step->id;
        standing.next = {"standing.next.afterwards", {left.front().what, left.front().step->title}};
        return;
    }
    standing.moment = Moment::HandOver;
    standing.next = notRight(job).value_or(Message{"standing.next.prove", {}});
}

} // namespace

Standing standing(const Job& job) {
    Standing standing;
    standing.stopped = stoppedAfter(job);
    const HistoryLine* last = lastInForce(job);
    standing.lastAt = last != nullptr ? last->at : job.opened.at;
    decideNext(job, standing);
    return standing;
}

namespace {

constexpr std::array<std::string_view, 8> momentCodes{"take in", "look over", "strip",     "wait",
                                                      "refit",   "prove",     "hand over", "done"};

} // namespace

std::string_view code(Moment moment) {
    return momentCodes.at(static_cast<std::size_t>(moment));
}

std::optional<Moment> momentFromCode(std::string_view text) {
    for (std::size_t i = 0; i < momentCodes.size(); ++i)
        if (momentCodes.at(i) == text)
            return static_cast<Moment>(i);
    return std::nullopt;
}

} // namespace undercowl::job
