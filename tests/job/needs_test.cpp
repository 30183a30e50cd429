// What is new every time and what is banned until when: common practice, no source.
#include "core/job/leaving.h"
#include "core/job/needs.h"
#include "core/job/proving.h"
#include "core/job/standing.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace undercowl::job;

namespace {

bool holds(const std::vector<std::string>& list, std::string_view part) {
    return std::any_of(list.begin(), list.end(),
                       [&](const std::string& text) { return text.find(part) != std::string::npos; });
}

Job withStep(const char* title) {
    Job job;
    StripStep step;
    step.id = "s";
    step.title = title;
    job.steps = {step};
    return job;
}

void see(Job& job, const std::string& what, bool leftOut = false, const std::string& note = {}) {
    SeenTo seen;
    seen.what = what;
    seen.leftOut = leftOut;
    seen.note = note;
    job.steps[0].seenTo.push_back(seen);
}

std::size_t stops(const Job& job) {
    const auto found = againstLeaving(job);
    return static_cast<std::size_t>(std::count_if(
        found.begin(), found.end(), [](const Against& against) { return against.weighs == Weighs::Stops; }));
}

} // namespace

TEST_CASE("A brake hose brings crush washers, bleeding, and a ban on riding") {
    const RefitNeeds needs = suggestedNeeds("Front brake hose off the caliper", {});
    CHECK(holds(needs.renew, "crush washers"));
    CHECK(holds(needs.afterwards, "bleed the brake"));
    CHECK(needs.doNotRide);
    CHECK_FALSE(needs.doNotStart);
}

TEST_CASE("Hardware that is never used twice is named with its thread") {
    const RefitNeeds needs = suggestedNeeds("bracket", {{1, "Split pin", "", "", {}},
                                                        {2, "self-locking nut", "M8", "", {}},
                                                        {4, "bolt", "M6", "16 mm", {}}});
    CHECK(needs.renew == std::vector<std::string>{"Split pin", "self-locking nut M8"});
    CHECK(needs.afterwards.empty());
}

TEST_CASE("A word within another one is not meant") {
    CHECK_FALSE(suggestedNeeds("flywheel off", {}).doNotRide);
    CHECK(suggestedNeeds("rear wheels off", {}).doNotRide);
    CHECK(suggestedNeeds("side panel", {}) == RefitNeeds{});
}

TEST_CASE("What the mechanic said of a step takes the place of what is suggested") {
    Job job = withStep("rear wheel");
    CHECK(needsOf(job.steps[0]).doNotRide);
    job.steps[0].needs = RefitNeeds{};
    CHECK(bans(job).empty());
}

TEST_CASE("Do not ride stands from stripping until the part is on and everything after it is done") {
    Job job = withStep("rear wheel");
    auto found = bans(job);
    REQUIRE(found.size() == 1);
    CHECK(found[0].ban == Ban::Ride);
    CHECK(found[0].apart);
    CHECK(mayLeave(job)); // the owner may fetch it in parts

    job.steps[0].refitted = Refitted{};
    found = bans(job);
    REQUIRE(found.size() == 1);
    CHECK_FALSE(found[0].apart);
    CHECK(found[0].missing == needsOf(job.steps[0]).afterwards);
    CHECK_FALSE(mayLeave(job));
    CHECK(standing(job).moment == Moment::Prove);
    CHECK(standing(job).stepId == "s");

    for (const std::string& what : needsOf(job.steps[0]).afterwards)
        see(job, what);
    CHECK(bans(job).empty());
    CHECK(mayLeave(job));
    CHECK(standing(job).moment == Moment::HandOver);
}

TEST_CASE("Left out for a reason lets the machine leave, and keeps the ban standing") {
    Job job = withStep("clutch cable");
    job.steps[0].refitted = Refitted{};
    see(job, needsOf(job.steps[0]).afterwards.at(0), true, "owner takes it home on a trailer");
    CHECK_FALSE(mayLeave(job)); // a cable has a proof of its own
    for (const ToProve& proof : openProofs(job))
        job.proofs.push_back({proof.subject, proof.what, false, "", {}});
    CHECK(mayLeave(job));
    const auto found = bans(job);
    REQUIRE(found.size() == 1);
    CHECK(found[0].leftOut);
    const auto against = againstLeaving(job);
    REQUIRE(against.size() == 1);
    CHECK(english(against[0].why) ==
          "left out: adjust the free play of the clutch (owner takes it home on a trailer)");
}

TEST_CASE("An open unsafe finding stops the machine until it is settled or its refusal is recorded") {
    Job job;
    Finding finding;
    finding.id = "f";
    finding.text = "tyre cracked";
    finding.severity = Severity::Unsafe;
    job.findings = {finding};
    CHECK_FALSE(mayLeave(job));
    CHECK(againstLeaving(job).at(0).way == Against::Way::SettleOrRefuse);

    Job refused = job;
    refused.findings[0].refused = Refusal{"Pia Dorsten", "called", "", {}};
    CHECK(mayLeave(refused));
    CHECK(english(againstLeaving(refused).at(0).why) ==
          "unsafe, and Pia Dorsten does not want it put right: tyre cracked");

    job.findings[0].settled = true;
    CHECK(againstLeaving(job).empty());

    job.findings[0].settled = false;
    job.findings[0].severity = Severity::Soon;
    CHECK(mayLeave(job));
}

TEST_CASE("A round that was begun and not finished is said, and a work that bars both ways stops once") {
    Job job = withStep("carburettor");
    job.steps[0].refitted = Refitted{};
    CHECK(stops(job) == needsOf(job.steps[0]).afterwards.size());
    Round round;
    round.id = "r";
    round.title = "Every machine";
    round.checks.resize(3);
    round.checks[0].answer = CheckAnswer::NotDone;
    job.rounds = {round};
    CHECK(english(againstLeaving(job).back().why) ==
          "round not finished: Every machine, 2 checks without an answer");
}
