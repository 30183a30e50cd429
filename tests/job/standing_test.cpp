#include "core/job/standing.h"

#include <catch2/catch.hpp>

using namespace undercowl::job;

namespace {

void happened(Job& job, const char* kind, const char* subject, TimeMs at) {
    job.history.push_back({"entry" + std::to_string(at), kind, subject, "m1", at, false, false});
}

Job stripped() {
    Job job;
    job.photos.emplace_back().id = "p";
    for (const char* title : {"mirror off", "unplug 6-place connector"}) {
        StripStep step;
        step.id = title;
        step.title = title;
        step.order = static_cast<int>(job.steps.size());
        step.bag = "7";
        job.steps.push_back(step);
    }
    happened(job, "job.opened", "job", 1);
    happened(job, "step.stripped", "unplug 6-place connector", 1000);
    return job;
}

} // namespace

TEST_CASE("A job says where it stopped and what is next") {
    Job job;
    CHECK(english(standing(job).next) == "next: photos as found, and what works");

    job = stripped();
    CHECK(english(standing(job).stopped) == "stopped after: unplug 6-place connector");
    CHECK(english(standing(job).next) == "next: go on stripping, or refit: unplug 6-place connector");
    CHECK(standing(job).moment == Moment::Strip);
    CHECK(standing(job).lastAt == 1000);

    job.steps[1].refitted = Refitted{};
    happened(job, "step.refitted", "unplug 6-place connector", 2000);
    CHECK(english(standing(job).stopped) == "stopped after refitting: unplug 6-place connector");
    CHECK(english(standing(job).next) == "next: refit mirror off, bag 7");
    CHECK(standing(job).moment == Moment::Refit);

    job.steps[0].refitted = Refitted{};
    CHECK(standing(job).moment == Moment::HandOver);

    Finding finding;
    finding.severity = Severity::Unsafe;
    finding.text = "front brake hose cracked";
    job.findings = {finding};
    CHECK(english(standing(job).next) == "next: settle what is unsafe: front brake hose cracked");

    job.findings[0].settled = true;
    job.handedOver = HandedOver{};
    CHECK(standing(job).moment == Moment::Done);
}

TEST_CASE("A withdrawn entry is not where the job stopped") {
    Job job = stripped();
    happened(job, "step.stripped", "mirror off", 3000);
    job.history.back().withdrawn = true;
    happened(job, "entry.withdrawn", "entry3000", 4000);
    CHECK(english(standing(job).stopped) == "stopped after: unplug 6-place connector");
}

TEST_CASE("What is no work leaves the last work standing") {
    Job job = stripped();
    happened(job, "memo.kept", "a memo", 3000);
    CHECK(english(standing(job).stopped) == "stopped after: unplug 6-place connector");
    CHECK(standing(job).lastAt == 3000);
    Job fresh;
    happened(fresh, "memo.kept", "a memo", 1000);
    CHECK(english(standing(fresh).stopped) == english(standing(Job{}).stopped));
}

TEST_CASE("A job whose open steps all wait says for what") {
    Job job = stripped();
    job.tasks = {{"t", "handlebar", true, "switch from the supplier", 0}};
    for (StripStep& step : job.steps)
        step.task = "t";
    CHECK(standing(job).moment == Moment::Wait);
    CHECK(english(standing(job).next) == "waits for: switch from the supplier");
}

TEST_CASE("Every key of a standing has its English pattern") {
    const Job job = stripped();
    const Standing now = standing(job);
    CHECK_FALSE(englishPattern(now.next.key).empty());
    CHECK_FALSE(englishPattern(now.stopped.key).empty());
    CHECK(englishPattern("no.such.key").empty());
}
