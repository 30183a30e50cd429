// What stands against saying that each wire was read back.
#include "core/job/leaving.h"
#include "core/job/proving.h"
#include "core/job/wires.h"

#include <catch2/catch.hpp>

using namespace undercowl;
using namespace undercowl::job;

namespace {

Job jobWith(int wires, wiring::Half half = wiring::Half::Loom) {
    Job job;
    StripStep step;
    step.id = "s";
    step.title = "unplug the tail";
    step.refitted = Refitted{};
    job.steps = {step};
    wiring::Gathering plug;
    plug.id = "g";
    plug.title = "tail plug";
    plug.places = 6;
    plug.step = "s";
    for (int number = 1; number <= wires; ++number)
        plug.at({half, number, 1}).answer(wiring::Answer::AsFound) = wiring::PlaceAnswer{};
    job.gatherings = {plug};
    return job;
}

void check(Job& job, int number, MatchOutcome outcome, wiring::Half half = wiring::Half::Loom) {
    job.wireChecks.push_back({"g", {half, number, 1}, outcome, {}, "", {}});
}

ToProve wiresProofOf(const Job& job) {
    for (const ToProve& each : toProve(job))
        if (each.kind == ProofKind::Wires)
            return each;
    FAIL("no wires are to be proved");
    return {};
}

} // namespace

TEST_CASE("Wires that do not match and wires that were skipped outweigh the word that they are proved") {
    Job job = jobWith(6);
    for (const int number : {1, 3, 4, 6})
        check(job, number, MatchOutcome::Matches);
    check(job, 5, MatchOutcome::DoesNotMatch);
    job.proofs = {{"g", "wires", false, "", {}}};
    CHECK(wiresProofOf(job).state == ToProve::State::Open);
    CHECK(againstText(wiresProofOf(job)) == "place 5 does not match; not read back: place 2");
    CHECK_FALSE(mayLeave(job));
    bool named = false;
    for (const Against& against : againstLeaving(job))
        if (against.way == Against::Way::ReadWires) {
            named = true;
            CHECK(against.subject == "g");
            const std::string why = english(against.why);
            CHECK(why.find("tail plug") != std::string::npos);
            CHECK(why.find("place 5 does not match; not read back: place 2") != std::string::npos);
        }
    CHECK(named);
    // Deliberately left out for a reason, as other proofs are.
    job.proofs = {{"g", "wires", true, "new plug comes on Friday", {}}};
    CHECK(wiresProofOf(job).state == ToProve::State::LeftOut);
    // Put right and read back.
    job.proofs.clear();
    job.wireChecks.back().outcome = MatchOutcome::Matches;
    CHECK(wiresProofOf(job).state == ToProve::State::Open);
    check(job, 2, MatchOutcome::Matches);
    CHECK(wiresProofOf(job).state == ToProve::State::Proved);
    CHECK(unreadGatherings(job, job.steps[0]).empty());
}

TEST_CASE("The loom's half is read back, the unit's counts where it alone is known, or does not match") {
    Job job = jobWith(2, wiring::Half::Unit);
    CHECK(againstText(wiresProofOf(job)) == "not read back: places 1, 2");
    CHECK(unreadGatherings(job, job.steps[0]).size() == 1);
    job.gatherings[0].at({wiring::Half::Loom, 1, 1}).answer(wiring::Answer::AsFound) = wiring::PlaceAnswer{};
    check(job, 1, MatchOutcome::Matches);
    CHECK(wiresProofOf(job).state == ToProve::State::Proved);
    check(job, 2, MatchOutcome::DoesNotMatch, wiring::Half::Unit);
    CHECK(againstText(wiresProofOf(job)) == "place 2, unit half, does not match");
}

TEST_CASE("A place that was said to be empty is read back too") {
    Job job = jobWith(1);
    auto& empty = job.gatherings[0].at({wiring::Half::Loom, 4, 1});
    empty.empty.at(static_cast<std::size_t>(wiring::Answer::AsFound)) = true;
    check(job, 1, MatchOutcome::Matches);
    CHECK(againstText(wiresProofOf(job)) == "not read back: place 4");
    check(job, 4, MatchOutcome::Matches);
    CHECK(wiresProofOf(job).state == ToProve::State::Proved);
}

TEST_CASE("A map without wires can be said proved, and proves nothing by itself") {
    Job job = jobWith(0);
    CHECK(wiresProofOf(job).state == ToProve::State::Open);
    job.proofs = {{"g", "wires", false, "one plug, cannot be swapped", {}}};
    CHECK(wiresProofOf(job).state == ToProve::State::Proved);
}
