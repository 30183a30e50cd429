// What goes with the work beside stripping: written by saywork.h, read back by the fold.
#include "core/journal/saywork.h"

#include "core/journal/fold.h"
#include "tests/journal/ledger.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <random>

using namespace undercowl;
using namespace undercowl::journal;

namespace {

job::Round round() {
    job::Round round;
    round.id = "r";
    round.key = "every";
    round.title = "Every machine";
    round.checks.resize(2);
    round.checks[0].group = "front brake";
    round.checks[0].text = "lever firm";
    round.checks[1].text = "horn";
    return round;
}

Ledger work() {
    Ledger ledger;
    JobPatch first;
    first.number = "2026-001";
    first.received = "two keys, papers";
    first.riderMass = job::TypedValue{"82", "kg"};
    first.luggageMass = job::TypedValue{"15", "kg"};
    ledger.add(jobOpened("j", first));
    job::Finding finding;
    finding.id = "f";
    finding.text = "tyre cracked";
    finding.severity = job::Severity::Unsafe;
    finding.minutes = 45;
    ledger.add(findingNoted("j", finding));
    ledger.add(findingRefused("j", "f", {"Pia", "called", "will sell it", {}}), "device-b");
    job::Approval approval;
    approval.id = "a";
    approval.what = "brake linings";
    approval.given = true;
    approval.by = "Pia";
    approval.how = "stood here";
    approval.sum = job::TypedValue{"120.50", "EUR"};
    approval.findings = {"f"};
    ledger.add(approvalAsked("j", approval));
    ledger.add(roundBegun("j", round()));
    ledger.add(checkAnswered("j", "r", "lever firm", job::CheckAnswer::Found, "spongy", "f"), "device-b");
    ledger.add(functionChecked("j", {"horn", job::FunctionAnswer::NotTried, "", {}}));
    ledger.add(functionChecked("j", {"horn", job::FunctionAnswer::DoesNot, "flat battery", {}}));
    job::Task bearing;
    bearing.id = "bearing";
    bearing.title = "bearing";
    ledger.add(taskNamed("j", bearing));
    job::Task wheel;
    wheel.id = "wheel";
    wheel.title = "wheel";
    wheel.after = {"bearing"};
    wheel.minutes = 40;
    wheel.finding = "f";
    ledger.add(taskNamed("j", wheel));
    ledger.add(timeStarted("j", "span", "wheel"));
    ledger.add(timeStopped("j", "span"), "device-b");
    ledger.add(timeStopped("j", "span", 25));
    ledger.add(taskHeld("j", "wheel", "the owner's word", job::Holds::Owner));
    ledger.add(taskFinished("j", "bearing"));
    wiring::Gathering plug;
    plug.id = "g";
    plug.title = "tail plug";
    plug.places = 4;
    plug.condition = "green on two pins";
    plug.treated = "cleaned, contact grease";
    plug.replaces = "old";
    ledger.add(gatheringDescribed("j", plug));
    job::StripStep step = stripStep("s", "rear wheel");
    step.task = "wheel";
    step.routing = "hose left of the shock";
    step.letOut = "none";
    step.asFound = "two threads showing";
    step.ends = "tap, carburettor";
    step.hardware.at(0).at = {{"photo", 0.25, 0.5}, {"photo", 0.75, 0.5}};
    ledger.add(stepStripped("j", step));
    ledger.add(refitNeeds("j", "s", {{"split pin"}, "grease", {"turn it"}, true, true}));
    ledger.add(refitSeenTo("j", "s", "turn it", true, "no stand"), "device-b");
    ledger.add(refitSeenTo("j", "s", "turn it"));
    ledger.add(refitWished("j", {"s"}));
    ledger.add(consumableUsed("j", {"c", "brake fluid", "DOT 4", "DOT 4", "7A", "2026-11-02", "s", {}}));
    job::Part part;
    part.id = "p";
    part.name = "brake shoes";
    part.supplier = "harbour stores";
    part.otherNumbers = "KX 1, QQ-2";
    part.price = job::TypedValue{"18.90", "EUR"};
    part.fit = "pivot hole too small";
    part.fitted = job::PartFit::DoesNotFit;
    ledger.add(partStated("j", part));
    return ledger;
}

} // namespace

TEST_CASE("Work is read back as it was said") {
    const Ledger ledger = work();
    for (const Entry& entry : ledger.entries)
        REQUIRE_FALSE(shapeProblem(entry));
    const job::Job job = foldJob("j", ledger.entries);
    REQUIRE(job.unreadable.empty());
    CHECK(job.received == "two keys, papers");
    CHECK(job.riderMass->digits == "82");
    CHECK(job.luggageMass->unit == "kg");
    REQUIRE(job.findings.size() == 1);
    CHECK(job.findings[0].minutes == 45);
    REQUIRE(job.findings[0].refused);
    CHECK(job.findings[0].refused->by == "Pia");
    CHECK(job.findings[0].refused->said.mechanic == "mechanic-device-b");
    CHECK_FALSE(job.findings[0].settled);
    REQUIRE(job.approvals.size() == 1);
    CHECK(job.approvals[0].given);
    CHECK(job.approvals[0].sum->digits == "120.50");
    CHECK(job.approvals[0].findings == std::vector<job::Id>{"f"});
    REQUIRE(job.rounds.size() == 1);
    CHECK(job.rounds[0].checks[0].answer == job::CheckAnswer::Found);
    CHECK(job.rounds[0].checks[0].finding == "f");
    CHECK_FALSE(job.rounds[0].checks[1].answer);
    REQUIRE(job.functions.size() == 1); // the last word holds
    CHECK(job.functions[0].answer == job::FunctionAnswer::DoesNot);
    CHECK(job.tasks[0].done);
    CHECK(job.tasks[1].after == std::vector<job::Id>{"bearing"});
    CHECK(job.tasks[1].minutes == 40);
    REQUIRE(job.spans.size() == 1);
    CHECK(job.spans[0].stopped->mechanic == "mechanic-device-b");
    CHECK(job.spans[0].minutes == 25);
    CHECK(job.tasks[1].waitingFor == "the owner's word");
    CHECK(job.tasks[1].heldBy == job::Holds::Owner);
    CHECK(job.steps[0].ends == "tap, carburettor");
    REQUIRE(job.steps[0].hardware.at(0).at.size() == 2);
    CHECK(job.steps[0].hardware[0].at[1] == wiring::PhotoMark{"photo", 0.75, 0.5});
    CHECK(job.gatherings.at(0).condition == "green on two pins");
    CHECK(job.gatherings.at(0).replaces == "old");
    CHECK(job.gatherings.at(0).treated == "cleaned, contact grease");
    CHECK(job.steps[0].routing == "hose left of the shock");
    CHECK(job.steps[0].asFound == "two threads showing");
    REQUIRE(job.steps[0].needs);
    CHECK(job.steps[0].needs->renew == std::vector<std::string>{"split pin"});
    CHECK(job.steps[0].needs->doNotStart);
    REQUIRE(job.steps[0].seenTo.size() == 1);
    CHECK_FALSE(job.steps[0].seenTo[0].leftOut);
    CHECK(job.refitWish == std::vector<job::Id>{"s"});
    CHECK(job.consumables.at(0).batch == "7A");
    CHECK(job.parts.at(0).fitted == job::PartFit::DoesNotFit);
    CHECK(job.parts.at(0).price->digits == "18.90");
}

TEST_CASE("Work folds to the same job in any order of arrival") {
    Ledger ledger = work();
    const job::Job expected = foldJob("j", ledger.entries);
    std::mt19937 dice(3);
    for (int turn = 0; turn < 30; ++turn) {
        std::shuffle(ledger.entries.begin(), ledger.entries.end(), dice);
        REQUIRE(foldJob("j", ledger.entries) == expected);
    }
}

TEST_CASE("A task taken up again is not finished") {
    Ledger ledger = work();
    ledger.add(taskResumed("j", "bearing"));
    CHECK_FALSE(foldJob("j", ledger.entries).tasks[0].done);
    ledger.add(taskResumed("j", "wheel"));
    CHECK(foldJob("j", ledger.entries).tasks[1].heldBy == job::Holds::NotSaid);
}

TEST_CASE("Work whose body does not fit is refused with the field's name") {
    const auto problem = [](const char* kind, const std::string& body) {
        Ledger ledger;
        return shapeProblem(ledger.add({kind, "j", "s", body, {}})).value_or("");
    };
    CHECK_THAT(problem("refit.seen-to", R"({"what":"bleed","left_out":true})"),
               Catch::Contains("note: must say why"));
    CHECK_THAT(problem("refit.needs", R"({"afterwards":"bleed"})"), Catch::Contains("afterwards"));
    CHECK_THAT(problem("refit.needs", R"({"do_not_ride":1})"), Catch::Contains("true or false"));
    CHECK_THAT(problem("finding.refused", "{}"), Catch::Contains("by: missing"));
    CHECK_THAT(problem("check.answered", R"({"check":"x","answer":"maybe"})"), Catch::Contains("maybe"));
    CHECK_THAT(problem("time.stopped", R"({"minutes":-1})"), Catch::Contains("minutes"));
    CHECK_THAT(problem("round.begun", R"({"key":"k","title":"t","checks":[{}]})"),
               Catch::Contains("text: missing"));
}
