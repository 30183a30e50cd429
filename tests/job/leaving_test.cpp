// What keeps a machine in the shop, what asks a second time, and what is told when it has left.
#include "core/job/complaints.h"
#include "core/job/leaving.h"
#include "core/job/safety.h"
#include "core/job/standing.h"
#include "core/job/waits.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace undercowl::job;

namespace {

Reading measured(const char* id, const char* what, const char* verdict) {
    Reading reading;
    reading.id = id;
    reading.what = what;
    reading.value = {"1.2", "mm"};
    reading.verdict = verdict;
    return reading;
}

std::vector<std::string> that(const Job& job, Weighs weighs) {
    std::vector<std::string> why;
    for (const Against& against : againstLeaving(job))
        if (against.weighs == weighs)
            why.push_back(english(against.why));
    return why;
}

Job refitted() {
    Job job;
    StripStep step;
    step.id = "s";
    step.title = "side panel";
    step.refitted = Refitted{};
    job.steps = {step};
    job.proofs = {{"s", "sits", false, "", {}}};
    return job;
}

Part ordered(const char* name) {
    Part part;
    part.id = "p";
    part.name = name;
    part.state = PartState::Ordered;
    return part;
}

} // namespace

TEST_CASE("What holds and stops a machine is known by its words, in five languages") {
    for (const char* what :
         {"rear tyre, tread depth", "Profiltiefe hinten", "front brake pads", "disc thickness",
          "brake fluid, boiling point", "Bremsbelag vorn", "battistrada posteriore",
          "profondeur de sculpture", "steering play", "Reifendruck"}) {
        INFO(what);
        CHECK(concernsSafety(what));
    }
    for (const char* what : {"battery discharge", "idle speed", "spark plug gap", "compression", "paddock"}) {
        INFO(what);
        CHECK_FALSE(concernsSafety(what));
    }
}

TEST_CASE("A reading beyond doubt outside its limit stops the machine where it concerns safety") {
    Job job;
    job.readings = {measured("r", "rear tyre, tread depth", "outside")};
    CHECK_FALSE(mayLeave(job));
    CHECK(that(job, Weighs::Stops) ==
          std::vector<std::string>{"measured outside its limit: rear tyre, tread depth, 1.2 mm"});

    Job close = job;
    close.readings[0].verdict = "too close to call";
    CHECK(mayLeave(close));
    CHECK(that(close, Weighs::Warns).size() == 1);

    Job idle = job;
    idle.readings[0].what = "idle speed";
    CHECK(mayLeave(idle));

    job.readings.push_back(measured("later", "rear tyre, tread depth", "within"));
    CHECK(mayLeave(job));
    CHECK(againstLeaving(job).empty());
}

TEST_CASE("An owner who refused the unsafe finding of the same thing lets the reading ask only") {
    Job job;
    job.readings = {measured("r", "rear tyre, tread depth", "outside")};
    Finding finding;
    finding.id = "f";
    finding.text = "rear tyre worn down";
    finding.severity = Severity::Unsafe;
    finding.refused = Refusal{"Pia Dorsten", "called", "", {}};
    job.findings = {finding};
    CHECK(mayLeave(job));
    CHECK(that(job, Weighs::Asks).size() == 1);
    job.findings[0].text = "rear lamp broken"; // "rear" is no thing
    CHECK_FALSE(mayLeave(job));
    job.findings[0].text = "front tyre worn down"; // the other one
    CHECK_FALSE(mayLeave(job));
    job.readings = {measured("r", "front brake pads, lining", "outside")};
    job.findings[0].text = "front brake hose cracked"; // both of the brake, and not the same
    CHECK_FALSE(mayLeave(job));
    job.findings[0].text = "front brake pads at the end";
    CHECK(mayLeave(job));
}

TEST_CASE("What bars riding and is not on again leaves only with a word on how") {
    Job job;
    StripStep step;
    step.id = "s";
    step.title = "brake caliper";
    job.steps = {step};
    CHECK(that(job, Weighs::Tells) == std::vector<std::string>{"do not ride: brake caliper is not on again"});
    CHECK(mayLeave(job));
    job.handedOver = HandedOver{};
    CHECK(english(standing(job).next) == "left open: brake caliper");
}

TEST_CASE("A part that is not fitted asks, and the machine is not said to be done") {
    Job job = refitted();
    REQUIRE(againstLeaving(job).empty());
    CHECK(waitingFor(job).what == Waits::HandOver);
    job.parts = {ordered("rear brake hose")};
    CHECK(that(job, Weighs::Asks) == std::vector<std::string>{"part not fitted: rear brake hose"});
    CHECK(english(standing(job).next) == "next: fit the part: rear brake hose");
    CHECK(waitingFor(job).what == Waits::Parts);
    job.parts[0].state = PartState::Here;
    CHECK(that(job, Weighs::Asks).size() == 1);
    CHECK(waitingFor(job).what == Waits::Bench);
    Job left = job;
    left.handedOver = HandedOver{};
    CHECK(english(standing(left).next) == "left open: rear brake hose");
    job.parts[0].state = PartState::Fitted;
    CHECK(againstLeaving(job).empty());
    CHECK(english(standing(job).next) == "next: prove it and hand it over");
    job.handedOver = HandedOver{};
    CHECK(english(standing(job).next) == "nothing open");
}

TEST_CASE("Wires that do not match come before proving, when all is on again") {
    Job job = refitted();
    undercowl::wiring::Gathering gathering;
    gathering.id = "g";
    gathering.title = "tail plug";
    gathering.places = 2;
    undercowl::wiring::PlaceAnswer known;
    known.entry = "e";
    gathering.at({undercowl::wiring::Half::Loom, 1, 1}).answer(undercowl::wiring::Answer::AsFound) = known;
    job.gatherings = {gathering};
    WireCheck check;
    check.gathering = "g";
    check.place = {undercowl::wiring::Half::Loom, 1, 1};
    check.outcome = MatchOutcome::DoesNotMatch;
    job.wireChecks = {check};
    CHECK(english(standing(job).next) == "next: put the wires right: tail plug");
}

TEST_CASE("What the owner complained of and what did not work asks until it has its answer") {
    Job job;
    job.reason = "No horn, indicators dead";
    job.worksNot = " no horn, indicators dead"; // said twice, asked once
    job.functions = {{"stop lamp, rear lever", FunctionAnswer::DoesNot, "", {}},
                     {"head lamp", FunctionAnswer::Works, "", {}}};
    CHECK(that(job, Weighs::Asks) ==
          std::vector<std::string>{"what the owner said has no answer: No horn, indicators dead",
                                   "did not work when it came in, and has no answer: stop lamp, rear lever"});
    CHECK(complaints(job).size() == 2);

    job.functionsAfter = {{"No horn, indicators dead", FunctionAnswer::Works, "", {}},
                          {"stop lamp, rear lever", FunctionAnswer::NotTried, "", {}}};
    CHECK(that(job, Weighs::Asks).size() == 1); // left without a word why
    job.functionsAfter[1].note = "switch comes on Friday";
    CHECK(that(job, Weighs::Asks).empty());
    CHECK(that(job, Weighs::Warns) ==
          std::vector<std::string>{"left as it was: stop lamp, rear lever (switch comes on Friday)"});
    job.functionsAfter[1].answer = FunctionAnswer::DoesNot;
    CHECK(that(job, Weighs::Warns) ==
          std::vector<std::string>{"does not work: stop lamp, rear lever (switch comes on Friday)"});
    job.handedOver = HandedOver{};
    CHECK(english(standing(job).next) == "left open: stop lamp, rear lever");
}
