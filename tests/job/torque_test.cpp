// Which readings show a torque that a step demands, and which speak against it.
#include "core/job/leaving.h"
#include "core/job/proving.h"
#include "core/job/torque.h"

#include <catch2/catch.hpp>

using namespace undercowl;
using namespace undercowl::job;

namespace {

Job jobWith(std::vector<Hardware> hardware) {
    Job job;
    StripStep step;
    step.id = "s";
    step.title = "plate";
    step.hardware = std::move(hardware);
    step.refitted = Refitted{};
    job.steps = {step};
    return job;
}

Reading reading(const char* what, const char* digits, const char* verdict = "", const char* low = nullptr,
                const char* high = nullptr) {
    Reading made;
    made.id = std::string(what) + digits;
    made.about = "s";
    made.what = what;
    made.value = {digits, "N.m"};
    made.verdict = verdict;
    if (low != nullptr)
        made.low = TypedValue{low, "N.m"};
    if (high != nullptr)
        made.high = TypedValue{high, "N.m"};
    return made;
}

const ToProve& torqueProof(const std::vector<ToProve>& all) {
    for (const ToProve& each : all)
        if (each.kind == ProofKind::Torque)
            return each;
    FAIL("no torque is to be proved");
    return all.front();
}

ToProve proofOf(const Job& job) {
    const auto all = toProve(job);
    return torqueProof(all);
}

using State = ToProve::State;

} // namespace

// ISO 6789-1: 4 % for a wrench above 10 N.m, 6 % up to it. The figures were worked out by hand.
TEST_CASE("A bare torque is as wide as the wrench that it is tightened with may be off") {
    const auto jobs = jobWith({{2, "bolt", "M8", "", TypedValue{"27", "N.m"}},
                               {1, "screw", "M5", "", TypedValue{"4.5", "N.m"}},
                               {1, "nut", "M10", "", TypedValue{"20", "lbf.ft"}}});
    const auto& all = jobs.steps[0].hardware;
    CHECK(torqueLimits(all[0]).low == "25.92");
    CHECK(torqueLimits(all[0]).high == "28.08");
    CHECK(torqueLimits(all[0]).limits.source.text() ==
          "shop record, 27 N.m in the step, \u00B1 4 % as of a wrench by ISO 6789-1");
    CHECK(torqueLimits(all[1]).low == "4.23");
    CHECK(torqueLimits(all[1]).high == "4.77");
    CHECK(torqueLimits(all[2]).low == "19.2");
    CHECK_FALSE(torqueOf(Hardware{1, "bolt", "M8", "", std::nullopt}));
    CHECK_FALSE(torqueOf(Hardware{1, "bolt", "M8", "", TypedValue{"0", "N.m"}}));
    CHECK_FALSE(torqueOf(Hardware{1, "bolt", "M8", "", TypedValue{"27", "bar"}}));
}

TEST_CASE("Only a reading judged inside the step's torque proves it") {
    Job job = jobWith({{2, "bolt", "M8", "", TypedValue{"27", "N.m"}}});
    CHECK(proofOf(job).state == State::Open);
    // Kept without limits: it shows nothing, and off it speaks against.
    job.readings = {reading("bolt M8, torque", "40")};
    CHECK(proofOf(job).state == State::Open);
    CHECK(againstText(proofOf(job)) == "bolt M8: read 40 N.m, to be 27 N.m");
    job.readings = {reading("bolt M8, torque", "27")};
    CHECK(proofOf(job).state == State::Open);
    CHECK(proofOf(job).against.empty());
    // Cannot be told, or judged against something else.
    for (const auto& weak : {reading("bolt M8, torque", "27", "too close to call", "26", "28"),
                             reading("bolt M8, torque", "27", "", "26", "28"),
                             reading("bolt M8, torque", "40", "within", "35", "45"),
                             reading("bolt M8, torque", "40", "within", "20")}) {
        job.readings = {weak};
        CHECK(proofOf(job).state == State::Open);
    }
    job.readings = {reading("bolt M8, torque", "27.2", "within", "25.92", "28.08")};
    CHECK(proofOf(job).state == State::Proved);
    // The last word on the same thing counts, in either order.
    job.readings.push_back(reading("bolt M8, torque", "40", "outside", "25.92", "28.08"));
    CHECK(proofOf(job).state == State::Open);
    CHECK_FALSE(mayLeave(job));
    job.readings.push_back(reading("bolt M8, torque", "26.8", "within", "25.92", "28.08"));
    CHECK(proofOf(job).state == State::Proved);
}

TEST_CASE("A torque read outside cannot be said proved, it is left out for a reason, or read again") {
    Job job = jobWith({{2, "bolt", "M8", "", TypedValue{"27", "N.m"}}});
    job.readings = {reading("bolt M8, torque", "40", "outside", "25.92", "28.08")};
    job.proofs = {{"s", "torque", false, "pulled at it", {}}};
    CHECK(proofOf(job).state == State::Open);
    const auto leaving = againstLeaving(job);
    REQUIRE_FALSE(leaving.empty());
    CHECK(english(leaving.front().why).find("read 40 N.m, to be 27 N.m") != std::string::npos);
    job.proofs = {{"s", "torque", true, "new bolts come on Friday", {}}};
    CHECK(proofOf(job).state == State::LeftOut);
    CHECK_FALSE(proofOf(job).against.empty()); // and the page can still say what was read
}

TEST_CASE("A touch alone shows no torque") {
    Job job = jobWith({{2, "bolt", "M8", "", TypedValue{"27", "N.m"}}});
    job.proofs = {{"s", "torque", false, "", {}}};
    CHECK(proofOf(job).state == State::Open);
    CHECK(proofOf(job).needsHow);
    job.proofs[0].note = "clicked at 27, both";
    CHECK(proofOf(job).state == State::Proved);
}

TEST_CASE("Each line of hardware needs its own reading, one reading stands for all of its pieces") {
    Job job = jobWith({{4, "bolt", "M8", "", TypedValue{"27", "N.m"}},
                       {2, "bolt", "M6", "20 mm", TypedValue{"10", "N.m"}},
                       {2, "bolt", "M6", "35 mm", TypedValue{"12", "N.m"}}});
    const StripStep& step = job.steps[0];
    CHECK(torqueName(step, step.hardware[0]) == "bolt M8");
    CHECK(torqueName(step, step.hardware[2]) == "bolt M6 x 35 mm");
    CHECK(torqueMeant(step, "bolt M6 x 35 mm, torque") == &step.hardware[2]);
    CHECK(torqueMeant(step, "bolt M6") == nullptr); // which of the two?
    job.readings = {reading("bolt M8, torque", "27", "within", "26", "28")};
    CHECK(proofOf(job).state == State::Open);
    job.readings.push_back(reading("bolt M6 x 20 mm, torque", "10", "within", "9.4", "10.6"));
    CHECK(proofOf(job).state == State::Open);
    job.readings.push_back(reading("bolt M6 x 35 mm, torque", "12.1", "within", "11.5", "12.5"));
    CHECK(proofOf(job).state == State::Proved);
}
