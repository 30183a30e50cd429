#include "core/journal/saywork.h"

#include "core/journal/saying.h"

namespace undercowl::journal {

Draft findingRefused(const Id& job, const Id& finding, const job::Refusal& refusal) {
    Json body{{"by", refusal.by}};
    put(body, "how", refusal.how);
    put(body, "note", refusal.note);
    return draft("finding.refused", job, finding, body);
}

Draft approvalAsked(const Id& job, const job::Approval& approval, const Id& supersedes) {
    Json body{{"what", approval.what}, {"given", approval.given}, {"by", approval.by}};
    put(body, "how", approval.how);
    put(body, "sum", approval.sum);
    put(body, "findings", approval.findings);
    return draft("approval.asked", job, approval.id, body, supersedes);
}

Draft roundBegun(const Id& job, const job::Round& round) {
    Json body{{"key", round.key}, {"title", round.title}, {"checks", Json::array()}};
    for (const job::RoundCheck& check : round.checks)
        body["checks"].push_back({{"group", check.group}, {"text", check.text}});
    return draft("round.begun", job, round.id, body);
}

Draft checkAnswered(const Id& job, const Id& round, const std::string& check, job::CheckAnswer answer,
                    const std::string& note, const Id& finding) {
    Json body{{"check", check}, {"answer", job::code(answer)}};
    put(body, "note", note);
    put(body, "finding", finding);
    return draft("check.answered", job, round, body);
}

Draft functionChecked(const Id& job, const job::FunctionCheck& check) {
    Json body{{"what", check.what}, {"answer", job::code(check.answer)}};
    put(body, "note", check.note);
    return draft("function.checked", job, job, body);
}

Draft timeStarted(const Id& job, const Id& span, const Id& task) {
    Json body = Json::object();
    put(body, "task", task);
    return draft("time.started", job, span, body);
}

Draft timeStopped(const Id& job, const Id& span, std::optional<int> minutes) {
    Json body = Json::object();
    if (minutes)
        body["minutes"] = *minutes;
    return draft("time.stopped", job, span, body);
}

Draft consumableUsed(const Id& job, const job::ConsumableUse& use) {
    Json body{{"what", use.what}};
    put(body, "grade", use.grade);
    put(body, "limit", use.limit);
    put(body, "batch", use.batch);
    put(body, "opened", use.opened);
    put(body, "about", use.about);
    return draft("consumable.used", job, use.id, body);
}

Draft taskFinished(const Id& job, const Id& task) {
    return draft("task.finished", job, task, Json::object());
}

Draft refitNeeds(const Id& job, const Id& step, const job::RefitNeeds& needs) {
    Json body = Json::object();
    put(body, "renew", needs.renew);
    put(body, "apply", needs.apply);
    put(body, "afterwards", needs.afterwards);
    if (needs.doNotStart)
        body["do_not_start"] = true;
    if (needs.doNotRide)
        body["do_not_ride"] = true;
    return draft("refit.needs", job, step, body);
}

Draft refitSeenTo(const Id& job, const Id& step, const std::string& what, bool leftOut,
                  const std::string& note) {
    Json body{{"what", what}};
    if (leftOut)
        body["left_out"] = true;
    put(body, "note", note);
    return draft("refit.seen-to", job, step, body);
}

Draft refitWished(const Id& job, const std::vector<Id>& steps) {
    return draft("refit.wished", job, job, {{"steps", steps}});
}

} // namespace undercowl::journal
