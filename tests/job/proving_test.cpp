// What is to be proved follows from what was disturbed: common practice, no source.
#include "core/job/cost.h"
#include "core/job/leaving.h"
#include "core/job/proving.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <random>

using namespace undercowl;
using namespace undercowl::job;

namespace {

StripStep refitted(const char* id, const char* title, std::vector<Hardware> hardware = {}) {
    StripStep made;
    made.id = id;
    made.title = title;
    made.hardware = std::move(hardware);
    made.refitted = Refitted{};
    return made;
}

const ToProve* due(const std::vector<ToProve>& all, ProofKind kind) {
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const ToProve& each) { return each.kind == kind; });
    return found == all.end() ? nullptr : &*found;
}

bool keepsHere(const Job& job) {
    return !mayLeave(job);
}

wiring::Gathering connector(int wires) {
    wiring::Gathering made;
    made.id = "g";
    made.title = "tail plug";
    made.places = 6;
    for (int number = 1; number <= wires; ++number) {
        wiring::PlaceAnswer answer;
        answer.wire.colour.base = colour::Insulation::GN;
        made.at({wiring::Half::Loom, number, 1}).answer(wiring::Answer::AsFound) = answer;
    }
    return made;
}

} // namespace

TEST_CASE("Nothing is disturbed without its proof, whatever it is called") {
    std::mt19937 random(11); // NOLINT(cert-msc51-cpp): the same steps in every run
    const std::vector<const char*> words{"seat", "brake hose", "throttle cable", "rear wheel", "plate",
                                         "drum", "vent pipe",  "fork",           "",           "\xC3\xBC"};
    for (int run = 0; run < 300; ++run) {
        Job job;
        for (std::size_t i = 0; i < 1 + random() % 6; ++i) {
            StripStep one = refitted(("s" + std::to_string(i)).c_str(), words[random() % words.size()]);
            if (random() % 2 == 0)
                one.hardware = {{2, "screw", "M5", "",
                                 random() % 2 == 0 ? std::optional(TypedValue{"4", "N.m"}) : std::nullopt}};
            if (random() % 3 == 0)
                one.refitted.reset();
            job.steps.push_back(one);
        }
        const auto all = toProve(job);
        for (const StripStep& one : job.steps)
            CHECK(std::any_of(all.begin(), all.end(),
                              [&](const ToProve& each) { return each.subject == one.id; }));
        const auto open = openProofs(job);
        CHECK(std::none_of(open.begin(), open.end(), [](const ToProve& each) { return each.apart; }));
        const bool anyOn = std::any_of(job.steps.begin(), job.steps.end(),
                                       [](const StripStep& one) { return one.refitted.has_value(); });
        CHECK(keepsHere(job) == anyOn); // nothing was proved: what is on again keeps it here
        for (const ToProve& each : open) {
            if (each.kind == ProofKind::Afterwards)
                std::find_if(job.steps.begin(), job.steps.end(), [&](const StripStep& one) {
                    return one.id == each.subject;
                })->seenTo.push_back({each.what, false, "", {}});
            else
                job.proofs.push_back({each.subject, each.what, random() % 2 == 0, "said", {}});
        }
        CHECK(openProofs(job).empty());
        CHECK_FALSE(keepsHere(job));
    }
}

TEST_CASE("A torque that was read proves its fasteners, one outside its limit does not") {
    Job job;
    job.steps = {refitted("s", "exhaust", {{2, "nut", "M7", "", TypedValue{"12", "N.m"}}})};
    REQUIRE(due(openProofs(job), ProofKind::Torque) != nullptr);
    Reading reading;
    reading.about = "s";
    reading.value = {"12.1", "N.m"};
    reading.verdict = "outside";
    job.readings = {reading};
    CHECK(due(openProofs(job), ProofKind::Torque) != nullptr);
    job.readings[0].verdict = "within";
    job.readings[0].low = TypedValue{"11", "N.m"};
    job.readings[0].high = TypedValue{"13", "N.m"};
    CHECK(due(openProofs(job), ProofKind::Torque) == nullptr);
    job.readings[0].value = {"2", "bar"};
    CHECK(due(openProofs(job), ProofKind::Torque) != nullptr);
}

TEST_CASE("Every wire of a map read back proves it, one that does not match keeps it open") {
    Job job;
    job.gatherings = {connector(2)};
    CHECK(due(openProofs(job), ProofKind::Wires) != nullptr);
    job.wireChecks = {{"g", {wiring::Half::Loom, 1, 1}, MatchOutcome::Matches, {}, "", {}}};
    CHECK(due(openProofs(job), ProofKind::Wires) != nullptr);
    job.wireChecks.push_back({"g", {wiring::Half::Loom, 2, 1}, MatchOutcome::DoesNotMatch, {}, "", {}});
    CHECK(due(openProofs(job), ProofKind::Wires) != nullptr);
    job.wireChecks[1].outcome = MatchOutcome::Matches;
    CHECK(openProofs(job).empty());
    job.gatherings = {connector(0)}; // nothing is known of it: nothing is proved
    CHECK(due(openProofs(job), ProofKind::Wires) != nullptr);
}

TEST_CASE("Hoses, cables and fluids have checks of their own, brakes can have a second pair of eyes") {
    Job job;
    job.steps = {refitted("h", "Front brake hose"), refitted("c", "clutch cable"),
                 refitted("o", "drain plug")};
    job.steps[2].letOut = "0.9 l oil, black";
    const auto all = toProve(job);
    REQUIRE(due(all, ProofKind::Hose) != nullptr);
    CHECK(due(all, ProofKind::Hose)->secondEyes);
    CHECK(due(all, ProofKind::Cable)->subject == "c");
    CHECK_FALSE(due(all, ProofKind::Cable)->secondEyes);
    CHECK(due(all, ProofKind::Fluid)->words.values.at(1) == "0.9 l oil, black");
    job.secondEyes = {{"h", "hose", "Bram", {}}};
    CHECK(due(toProve(job), ProofKind::Hose)->secondedBy == "Bram");
}

TEST_CASE("The cost is work, fitted parts and lines, with tax rounded once") {
    Job job;
    job.costTerms = CostTerms{"EUR", "58", "19", {{"tyre fitted outside", "12.345"}}, {}};
    Task task;
    task.id = "t";
    task.title = "rear brake";
    task.minutes = 60;
    job.tasks = {task};
    WorkSpan span;
    span.id = "w";
    span.task = "t";
    span.stopped = Said{};
    span.minutes = 70;
    job.spans = {span};
    Part fitted;
    fitted.name = "shoes";
    fitted.state = PartState::Fitted;
    fitted.price = TypedValue{"18,50", "eur"};
    Part wrong = fitted;
    wrong.state = PartState::Wrong; // sent back: not on the bill
    Part unpriced = fitted;
    unpriced.price.reset();
    Part foreign = fitted;
    foreign.price = TypedValue{"100", "DKK"};
    job.parts = {fitted, wrong, unpriced, foreign};
    Approval approval;
    approval.given = true;
    approval.sum = TypedValue{"100", "EUR"};
    job.approvals = {approval};
    const auto cost = costOf(job, 0);
    REQUIRE(cost);
    REQUIRE(cost->rows.size() == 3);
    CHECK(money(cost->rows[0].net, "EUR") == "67.67\u00A0EUR"); // 70/60 x 58
    CHECK(money(cost->rows[2].net, "EUR") == "12.35\u00A0EUR");
    CHECK(money(cost->net, "EUR") == "98.52\u00A0EUR");
    CHECK(money(cost->tax, "EUR") == "18.72\u00A0EUR"); // 18.7188
    CHECK(money(cost->gross, "EUR") == "117.24\u00A0EUR");
    CHECK(cost->minutes == 70);
    CHECK(cost->minutesExpected == 60);
    CHECK(cost->approved == std::vector<TypedValue>{{"100.00", "EUR"}});
    CHECK(cost->doubts.size() == 2);
    job.costTerms->currency = "JPY";
    job.costTerms->hourRate = "5000";
    CHECK(money(costOf(job, 0)->rows[0].net, "JPY") == "5833\u00A0JPY");
    job.costTerms.reset();
    CHECK_FALSE(costOf(job, 0));
}

TEST_CASE("A recheck is due so many days after the hand-over, and gone once it is seen") {
    Job job;
    Recheck recheck;
    recheck.afterDays = 14;
    recheck.said.at = 0;
    CHECK(dueAt(job, recheck) == TimeMs{14} * 24 * 3600 * 1000);
    job.handedOver = HandedOver{};
    job.handedOver->said.at = 1000;
    CHECK(dueAt(job, recheck) == TimeMs{14} * 24 * 3600 * 1000 + 1000);
    recheck.afterDays.reset();
    CHECK_FALSE(dueAt(job, recheck));
    recheck.afterDays = 1;
    recheck.seen = Noted{};
    CHECK_FALSE(dueAt(job, recheck));
}
