// What is asked before a finding is said to be put right.
#include "core/job/settling.h"

#include <catch2/catch.hpp>

using namespace undercowl::job;

namespace {

Job cracked() {
    Job job;
    Finding finding;
    finding.id = "f";
    finding.text = "rear brake hose cracked";
    finding.severity = Severity::Unsafe;
    job.findings = {finding};
    Part part;
    part.id = "p";
    part.name = "Hose, rear brake";
    part.state = PartState::Ordered;
    job.parts = {part};
    return job;
}

} // namespace

TEST_CASE("An unsafe finding asks what was done and names the part that is not fitted") {
    Job job = cracked();
    const Settling asked = settling(job, job.findings[0]);
    CHECK(asked.asksHow);
    REQUIRE(asked.notFitted.size() == 1);
    CHECK(asked.notFitted[0]->name == "Hose, rear brake");
    job.parts[0].state = PartState::Fitted;
    CHECK(settling(job, job.findings[0]).notFitted.empty());
    job.findings[0].severity = Severity::Note;
    CHECK_FALSE(settling(job, job.findings[0]).asksHow);
}

TEST_CASE("A part belongs to a finding by its link or a word that is no place") {
    Job job = cracked();
    job.parts[0].name = "rear mirror";
    CHECK(settling(job, job.findings[0]).notFitted.empty());
    job.parts[0].name = "Bremsschlauch"; // in another language
    CHECK(settling(job, job.findings[0]).notFitted.size() == 1);
    job.parts[0].name = "banjo kit";
    CHECK(settling(job, job.findings[0]).notFitted.empty());
    for (const char* other : {"brake pads", "front brake hose", "Bremsschlauch vorn"}) {
        INFO(other);
        job.parts[0].name = other;
        CHECK(settling(job, job.findings[0]).notFitted.empty());
    }
    job.parts[0].name = "banjo kit";
    job.parts[0].about = "f";
    CHECK(settling(job, job.findings[0]).notFitted.size() == 1);

    Task task;
    task.id = "t";
    task.finding = "f";
    StripStep step;
    step.id = "s";
    step.task = "t";
    job.tasks = {task};
    job.steps = {step};
    job.parts[0].about = "s";
    CHECK(settling(job, job.findings[0]).notFitted.size() == 1);
}

TEST_CASE("Tasks that are done tell what was done") {
    Job job = cracked();
    Task task;
    task.id = "t";
    task.title = "renew the hose, bleed the brake";
    task.finding = "f";
    job.tasks = {task};
    CHECK(settling(job, job.findings[0]).done.empty());
    job.tasks[0].done = true;
    REQUIRE(settling(job, job.findings[0]).done.size() == 1);
    CHECK(settling(job, job.findings[0]).done[0]->title == task.title);
}
