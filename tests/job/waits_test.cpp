// What each machine waits for. Shop rules: common practice, no source.
#include "core/job/waits.h"

#include <catch2/catch.hpp>

using namespace undercowl::job;

namespace {

constexpr TimeMs noon = 1000;

Finding found(const char* id, Severity severity, TimeMs at = noon) {
    Finding finding;
    finding.id = id;
    finding.text = id;
    finding.severity = severity;
    finding.said.at = at;
    return finding;
}

StripStep taken(const char* id, const char* task = "") {
    StripStep step;
    step.id = id;
    step.title = id;
    step.task = task;
    return step;
}

Approval approval(TimeMs at, std::vector<Id> findings = {}) {
    Approval approval;
    approval.given = true;
    approval.findings = std::move(findings);
    approval.said.at = at;
    return approval;
}

Task held(const char* id, const char* reason, Holds by = Holds::NotSaid) {
    Task task;
    task.id = id;
    task.title = id;
    task.waiting = true;
    task.waitingFor = reason;
    task.heldBy = by;
    return task;
}

} // namespace

TEST_CASE("a machine that was looked over waits for the owner's answer until it is given") {
    Job job;
    CHECK(waitingFor(job).what == Waits::Bench);
    job.findings = {found("mirror cracked", Severity::Note)};
    CHECK(waitingFor(job).what == Waits::Bench); // to be told, not to be asked

    job.findings.push_back(found("hose cracked", Severity::Unsafe));
    job.findings.push_back(found("chain dry", Severity::Soon));
    CHECK(waitingFor(job).what == Waits::Owner);
    CHECK(english(waitingFor(job).why) == "ask the owner: hose cracked, chain dry");

    SECTION("named one by one") {
        job.approvals = {approval(noon + 1, {"hose cracked"})};
        CHECK(english(waitingFor(job).why) == "ask the owner: chain dry");
        job.approvals.push_back(approval(noon + 2, {"chain dry"}));
        CHECK(waitingFor(job).what == Waits::Bench);
    }
    SECTION("as a whole, which says nothing of what is found later") {
        job.approvals = {approval(noon + 1)};
        CHECK(waitingFor(job).what == Waits::Bench);
        job.findings.push_back(found("bearing rough", Severity::Soon, noon + 2));
        CHECK(english(waitingFor(job).why) == "ask the owner: bearing rough");
    }
    SECTION("refused or settled") {
        job.findings[1].refused = Refusal{};
        job.findings[2].settled = true;
        CHECK(waitingFor(job).what == Waits::Bench);
    }
}

TEST_CASE("a task that waits does not count while another can go on") {
    Job job;
    job.tasks = {held("brake", "shoes"), {}};
    job.tasks[1].id = "loom";
    job.steps = {taken("hub off", "brake"), taken("plug", "loom")};
    CHECK(waitingFor(job).what == Waits::Bench);
    job.steps[1].refitted = Refitted{};
    job.steps[1].order = 1;
    CHECK(waitingFor(job).what == Waits::Outside); // no part is to come
    CHECK(english(waitingFor(job).why) == "waits for: shoes");

    Part part;
    part.state = PartState::Ordered;
    job.parts = {part};
    CHECK(waitingFor(job).what == Waits::Parts);
    job.parts[0].state = PartState::Here;
    CHECK(waitingFor(job).what == Waits::Outside);

    job.tasks[0].heldBy = Holds::Parts; // what was said holds
    CHECK(waitingFor(job).what == Waits::Parts);
    job.tasks[1] = held("loom", "price agreed", Holds::Owner);
    CHECK(waitingFor(job).what == Waits::Owner); // before parts
    CHECK(english(waitingFor(job).why) == "waits for: price agreed");
}

TEST_CASE("when all is on again it waits for proof, then to be handed over") {
    Job job;
    job.steps = {taken("seat off")};
    job.steps[0].refitted = Refitted{};
    CHECK(waitingFor(job).what == Waits::Prove);
    CHECK(english(waitingFor(job).why) == "1 to prove, first: sits as it did, nothing left over: seat off");
    job.proofs = {{"seat off", "sits", false, {}, {}}};
    CHECK(waitingFor(job).what == Waits::HandOver);

    job.findings = {found("hose cracked", Severity::Unsafe)};
    CHECK(waitingFor(job).what == Waits::Owner);
    job.approvals = {approval(noon)};
    CHECK(waitingFor(job).what == Waits::Bench); // it is to be put right
    job.findings[0].settled = true;
    Task task;
    task.id = "tyres";
    job.tasks = {task};
    CHECK(waitingFor(job).what == Waits::Bench); // not begun
    job.tasks[0] = held("tyres", "a day without rain");
    CHECK(waitingFor(job).what == Waits::Outside);
    job.handedOver = HandedOver{};
    CHECK(waitingFor(job).what == Waits::Nothing);
}

TEST_CASE("when all is on again without a part that is on order, it waits for that") {
    Job job;
    job.tasks.push_back(Task{});
    job.tasks.back().id = "wheel";
    job.steps.push_back(taken("rear wheel", "wheel"));
    job.steps.back().refitted.emplace();
    Part part;
    part.name = "sealing ring";
    part.about = "rear wheel";
    part.state = PartState::Ordered;
    job.parts.push_back(part);
    CHECK(waitingFor(job) == Waiting{Waits::Parts, {"waits.held", {"sealing ring"}}});
    job.tasks.push_back(Task{}); // another one can go on
    job.tasks.back().id = "wash";
    CHECK(waitingFor(job).what == Waits::Bench);
    job.tasks.back().done = true;
    CHECK(waitingFor(job).what == Waits::Parts);
    job.tasks.push_back(held("seat", "the owner's word", Holds::Owner)); // before the part
    CHECK(waitingFor(job).what == Waits::Owner);
    job.tasks.pop_back();
    job.parts[0].state = PartState::Here; // can be fitted now
    CHECK(waitingFor(job).what == Waits::Bench);
    job.parts[0].state = PartState::NotNeeded; // nobody waits for it
    CHECK(waitingFor(job).what != Waits::Parts);
    job.parts[0].state = PartState::Ordered;
    job.tasks[0].done = true; // said to be finished all the same
    CHECK(waitingFor(job).what != Waits::Parts);
}

TEST_CASE("each code is read back") {
    for (int i = 0; i <= static_cast<int>(Waits::Nothing); ++i)
        CHECK(waitsFromCode(code(static_cast<Waits>(i))) == static_cast<Waits>(i));
    CHECK_FALSE(waitsFromCode("lunch"));
}
