// What goes with the work beside stripping: approvals, rounds, time, consumables, what a refit needs.
#include "core/journal/applying.h"

#include <array>

namespace undercowl::journal {

std::vector<std::string> texts(const Fields& body, const char* name) {
    std::vector<std::string> found;
    if (!body.has(name))
        return found;
    for (const Json& item : body.list(name)) {
        if (!item.is_string())
            throw ShapeError(std::string(name) + ": must be a list of texts");
        found.push_back(item.get<std::string>());
    }
    return found;
}

std::optional<int> minutesIfAny(const Fields& body) {
    constexpr int minutesInYear = 366 * 24 * 60;
    if (!body.has("minutes"))
        return std::nullopt;
    return static_cast<int>(body.whole("minutes", 0, minutesInYear));
}

bool flag(const Fields& body, const char* name) {
    if (!body.has(name))
        return false;
    if (!body.child(name).is_boolean())
        throw ShapeError(std::string(name) + ": must be true or false");
    return body.child(name).get<bool>();
}

namespace {

using job::Job;

void refuseFinding(Job& job, const Fields& body, const InForce& entry) {
    const job::Refusal refusal{body.text("by"), body.textOr("how"), body.textOr("note"), said(entry)};
    if (auto* finding = byId(job.findings, entry.first->subject))
        finding->refused = refusal;
}

void askApproval(Job& job, const Fields& body, const InForce& entry) {
    job::Approval approval;
    approval.id = entry.first->subject;
    approval.what = body.text("what");
    approval.given = flag(body, "given");
    approval.by = body.text("by");
    approval.how = body.textOr("how");
    approval.sum = typedIfAny(body, "sum");
    approval.findings = texts(body, "findings");
    approval.said = said(entry);
    putById(job.approvals, std::move(approval));
}

void beginRound(Job& job, const Fields& body, const InForce& entry) {
    job::Round round;
    round.id = entry.first->subject;
    round.key = body.text("key");
    round.title = body.text("title");
    for (const Json& item : body.list("checks")) {
        const Fields check(item, "check");
        job::RoundCheck made;
        made.group = check.textOr("group");
        made.text = check.text("text");
        round.checks.push_back(std::move(made));
    }
    round.said = said(entry);
    putById(job.rounds, std::move(round));
}

void answerCheck(Job& job, const Fields& body, const InForce& entry) {
    const std::string text = body.text("check");
    const auto answer = body.word("answer", job::checkAnswerFromCode);
    const std::string note = body.textOr("note");
    const Id finding = body.textOr("finding");
    auto* round = byId(job.rounds, entry.first->subject);
    if (round == nullptr)
        return;
    for (job::RoundCheck& check : round->checks)
        if (check.text == text) {
            check.answer = answer;
            check.note = note;
            check.finding = finding;
            check.said = said(entry);
        }
}

void keepFunction(std::vector<job::FunctionCheck>& functions, const Fields& body, const InForce& entry) {
    job::FunctionCheck check{body.text("what"), body.word("answer", job::functionAnswerFromCode),
                             body.textOr("note"), said(entry)};
    for (job::FunctionCheck& old : functions)
        if (old.what == check.what) {
            old = std::move(check);
            return;
        }
    functions.push_back(std::move(check));
}

void checkFunction(Job& job, const Fields& body, const InForce& entry) {
    keepFunction(job.functions, body, entry);
}

void proveFunction(Job& job, const Fields& body, const InForce& entry) {
    keepFunction(job.functionsAfter, body, entry);
}

void startTime(Job& job, const Fields& body, const InForce& entry) {
    job::WorkSpan span;
    span.id = entry.first->subject;
    span.task = body.textOr("task");
    span.started = said(entry);
    putById(job.spans, std::move(span));
}

// Said again, it corrects the minutes; the watch stopped when it was stopped first.
void stopTime(Job& job, const Fields& body, const InForce& entry) {
    const auto minutes = minutesIfAny(body);
    auto* span = byId(job.spans, entry.first->subject);
    if (span == nullptr)
        return;
    if (!span->stopped)
        span->stopped = said(entry);
    if (minutes)
        span->minutes = minutes;
}

void useConsumable(Job& job, const Fields& body, const InForce& entry) {
    job::ConsumableUse use;
    use.id = entry.first->subject;
    use.what = body.text("what");
    use.grade = body.textOr("grade");
    use.limit = body.textOr("limit");
    use.batch = body.textOr("batch");
    use.opened = body.textOr("opened");
    use.about = body.textOr("about");
    use.said = said(entry);
    putById(job.consumables, std::move(use));
}

void finishTask(Job& job, const Fields& /*body*/, const InForce& entry) {
    if (auto* task = byId(job.tasks, entry.first->subject)) {
        task->done = true;
        task->waiting = false;
        task->waitingFor.clear();
        task->heldBy = job::Holds::NotSaid;
    }
}

void needRefit(Job& job, const Fields& body, const InForce& entry) {
    const job::RefitNeeds needs{texts(body, "renew"), body.textOr("apply"), texts(body, "afterwards"),
                                flag(body, "do_not_start"), flag(body, "do_not_ride")};
    if (auto* step = byId(job.steps, entry.first->subject))
        step->needs = needs;
}

void seeTo(Job& job, const Fields& body, const InForce& entry) {
    job::SeenTo seen{body.text("what"), flag(body, "left_out"), body.textOr("note"), said(entry)};
    if (seen.leftOut && seen.note.empty())
        throw ShapeError("note: must say why it was left out");
    auto* step = byId(job.steps, entry.first->subject);
    if (step == nullptr)
        return;
    std::erase_if(step->seenTo, [&](const job::SeenTo& old) { return old.what == seen.what; });
    step->seenTo.push_back(std::move(seen));
}

void wishOrder(Job& job, const Fields& body, const InForce& /*entry*/) {
    job.refitWish = texts(body, "steps");
}

constexpr std::array kinds{
    Kind{"finding.refused", refuseFinding},  Kind{"approval.asked", askApproval},
    Kind{"round.begun", beginRound},         Kind{"check.answered", answerCheck},
    Kind{"function.checked", checkFunction}, Kind{"function.proved", proveFunction},
    Kind{"time.started", startTime},         Kind{"time.stopped", stopTime},
    Kind{"consumable.used", useConsumable},  Kind{"task.finished", finishTask},
    Kind{"refit.needs", needRefit},          Kind{"refit.seen-to", seeTo},
    Kind{"refit.wished", wishOrder},
};

} // namespace

ApplyToJob applyToWork(std::string_view kind) {
    const auto found =
        std::find_if(kinds.begin(), kinds.end(), [kind](const Kind& k) { return k.name == kind; });
    return found == kinds.end() ? applyToClosing(kind) : found->apply;
}

} // namespace undercowl::journal
