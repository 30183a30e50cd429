#include "core/job/waits.h"

#include "core/job/leaving.h"
#include "core/job/needs.h"
#include "core/job/proving.h"
#include "core/job/refit.h"
#include "core/job/text.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace undercowl::job {
namespace {

bool answered(const Job& job, const Finding& finding) {
    return std::any_of(job.approvals.begin(), job.approvals.end(), [&](const Approval& approval) {
        if (approval.findings.empty())
            return approval.said.at >= finding.said.at;
        return std::find(approval.findings.begin(), approval.findings.end(), finding.id) !=
               approval.findings.end();
    });
}

bool toCome(const Part& part) {
    return outstanding(part) && part.state != PartState::Here;
}

// Of tasks that are held: what each was held by.
Holds heldBy(const Job& job, const Task& task) {
    if (task.heldBy != Holds::NotSaid)
        return task.heldBy;
    return std::any_of(job.parts.begin(), job.parts.end(), toCome) ? Holds::Parts : Holds::Outside;
}

// The owner's answer comes before parts, which may have to be ordered after it.
Waiting heldTasks(const Job& job) {
    for (const auto& [holds, what] : {std::pair{Holds::Owner, Waits::Owner},
                                      {Holds::Parts, Waits::Parts},
                                      {Holds::Outside, Waits::Outside}}) {
        std::vector<std::string> reasons;
        for (const Task& task : job.tasks)
            if (task.waiting && heldBy(job, task) == holds)
                reasons.push_back(task.waitingFor.empty() ? task.title : task.waitingFor);
        if (!reasons.empty())
            return {what, {"waits.held", {listed(reasons)}}};
    }
    return {Waits::Bench, {}};
}

std::optional<Waiting> owners(const Job& job) {
    const auto open = unanswered(job);
    if (open.empty())
        return std::nullopt;
    std::vector<std::string> texts;
    texts.reserve(open.size());
    for (const Finding* finding : open)
        texts.push_back(finding->text);
    return Waiting{Waits::Owner, {"waits.owner", {listed(texts)}}};
}

// Nothing was taken off yet: it is looked over, or waits before the first bolt.
Waiting beforeStripping(const Job& job) {
    const auto open = [](const Task& task) { return !task.done; };
    const bool allHeld = std::any_of(job.tasks.begin(), job.tasks.end(), open) &&
                         std::all_of(job.tasks.begin(), job.tasks.end(),
                                     [&](const Task& task) { return !open(task) || task.waiting; });
    if (allHeld)
        return heldTasks(job);
    return owners(job).value_or(Waiting{});
}

Waiting allOn(const Job& job) {
    const auto isHeld = [](const Task& task) { return task.waiting; };
    std::vector<std::string> parts; // on again without them
    for (const Task& task : job.tasks) {
        if (task.waiting || finished(job, task))
            continue;
        const std::size_t before = parts.size();
        for (const Part* part : partsToFit(job, task))
            if (toCome(*part))
                parts.push_back(part->name);
        if (parts.size() == before)
            return {}; // something can be done for it now
    }
    if (std::any_of(job.tasks.begin(), job.tasks.end(), isHeld))
        return heldTasks(job);
    if (!parts.empty())
        return {Waits::Parts, {"waits.held", {listed(parts)}}};
    if (auto asked = owners(job))
        return *std::move(asked);
    const auto unsafe = [](const Finding& finding) {
        return finding.severity == Severity::Unsafe && !finding.settled && !finding.refused;
    };
    if (std::any_of(job.findings.begin(), job.findings.end(), unsafe))
        return {};
    if (const auto open = openProofs(job); !open.empty())
        return {Waits::Prove, {"waits.prove", {std::to_string(open.size()), english(open.front().words)}}};
    for (const Part& part : job.parts)
        if (toCome(part))
            parts.push_back(part.name);
    if (!parts.empty())
        return {Waits::Parts, {"waits.held", {listed(parts)}}};
    if (std::any_of(job.parts.begin(), job.parts.end(), outstanding))
        return {}; // it lies here: fit it
    return mayLeave(job) ? Waiting{Waits::HandOver, {"waits.hand-over", {}}} : Waiting{};
}

constexpr std::array<std::string_view, 7> codes{"bench time", "proof", "hand over", "owner",
                                                "parts",      "other", "nothing"};

} // namespace

std::vector<const Finding*> unanswered(const Job& job) {
    std::vector<const Finding*> open;
    for (const Finding& finding : job.findings)
        if (finding.severity != Severity::Note && !finding.settled && !finding.refused &&
            !answered(job, finding))
            open.push_back(&finding);
    return open;
}

Waiting waitingFor(const Job& job) {
    if (job.handedOver)
        return {Waits::Nothing, {}};
    if (job.steps.empty())
        return beforeStripping(job);
    if (std::all_of(job.steps.begin(), job.steps.end(),
                    [](const StripStep& step) { return step.refitted.has_value(); }))
        return allOn(job);
    return nextRefit(job) ? Waiting{} : heldTasks(job);
}

std::string_view code(Waits waits) {
    return codes.at(static_cast<std::size_t>(waits));
}

std::optional<Waits> waitsFromCode(std::string_view text) {
    for (std::size_t i = 0; i < codes.size(); ++i)
        if (codes.at(i) == text)
            return static_cast<Waits>(i);
    return std::nullopt;
}

} // namespace undercowl::job
