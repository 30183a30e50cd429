// What is said between the last bolt and the owner's hand: written by sayclosing.h, read back by the fold.
#include "core/journal/sayclosing.h"

#include "core/journal/fold.h"
#include "core/journal/saywork.h"
#include "tests/journal/ledger.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <random>

using namespace undercowl;
using namespace undercowl::journal;

namespace {

Ledger closing() {
    Ledger ledger;
    JobPatch first;
    first.number = "2026-002";
    first.cameBackFrom = "j0";
    ledger.add(jobOpened("j", first));
    ledger.add(stepStripped("j", stripStep("s", "rear wheel")));
    ledger.add(proofGiven("j", {"s", "fasteners", true, "no wrench", {}}));
    ledger.add(proofGiven("j", {"s", "fasteners", false, "", {}}), "device-b");
    ledger.add(secondEyesGiven("j", {"s", "fasteners", "Bram", {}}), "device-b");
    ledger.add(functionChecked("j", {"horn", job::FunctionAnswer::DoesNot, "", {}}));
    ledger.add(functionProved("j", {"horn", job::FunctionAnswer::Works, "", {}}));
    ledger.add(roadTested("j", {"r", job::TypedValue{"4.2", "km"}, "straight", {}}));
    job::Recheck recheck;
    recheck.id = "c";
    recheck.what = "axle nut";
    recheck.afterDays = 14;
    ledger.add(recheckDue("j", recheck));
    ledger.add(recheckSeen("j", "c", "49 N.m"));
    ledger.add(costSettled("j", {"EUR", "58", "19", {{"tyre", "12.50"}}, {}}));
    ledger.add(ownerSigned("j", {"g", "Ilse", "ab.png", {}}));
    ledger.add(jobHandedOver("j", "holds straight", "given back", "oil"));
    return ledger;
}

} // namespace

TEST_CASE("What is said at the end comes back from the journal as it was said") {
    const Ledger ledger = closing();
    for (const Entry& entry : ledger.entries) {
        INFO(entry.kind);
        CHECK_FALSE(shapeProblem(entry));
    }
    const job::Job job = foldJob("j", ledger.entries);
    CHECK(job.unreadable.empty());
    CHECK(job.cameBackFrom == "j0");
    REQUIRE(job.proofs.size() == 1);
    CHECK_FALSE(job.proofs[0].leftOut);
    CHECK(job.secondEyes.at(0).by == "Bram");
    CHECK(job.functions.at(0).answer == job::FunctionAnswer::DoesNot);
    CHECK(job.functionsAfter.at(0).answer == job::FunctionAnswer::Works);
    CHECK(job.roadTests.at(0).distance == job::TypedValue{"4.2", "km"});
    CHECK(job.rechecks.at(0).seen->note == "49 N.m");
    CHECK(job.costTerms->lines == std::vector<job::CostLine>{{"tyre", "12.50"}});
    CHECK(job.signature->name == "Ilse");
    CHECK(job.handedOver->waste == "oil");
    CHECK(mediaNamed(*std::find_if(ledger.entries.begin(), ledger.entries.end(), [](const Entry& entry) {
              return entry.kind == "owner.signed";
          })) == "ab.png");
}

TEST_CASE("In whatever order the entries of two devices arrive, the end reads the same") {
    const Ledger ledger = closing();
    const job::Job job = foldJob("j", ledger.entries);
    std::mt19937 random(3); // NOLINT(cert-msc51-cpp): the same orders in every run
    for (int run = 0; run < 20; ++run) {
        auto entries = ledger.entries;
        std::shuffle(entries.begin(), entries.end(), random);
        CHECK(foldJob("j", entries) == job);
    }
}

TEST_CASE("What cannot be reckoned or answered with is refused by its field") {
    const auto problem = [](const Draft& draft) {
        Ledger ledger;
        return shapeProblem(ledger.add(draft)).value_or("");
    };
    CHECK(problem(proofGiven("j", {"s", "hose", true, "", {}})).find("note") != std::string::npos);
    CHECK(problem(secondEyesGiven("j", {"s", "hose", "", {}})).find("by") != std::string::npos);
    CHECK(problem(costSettled("j", {"EUR", "1e3", "", {}, {}})).find("hour_rate") != std::string::npos);
    CHECK(problem(costSettled("j", {"EUR", "", "19 %", {}, {}})).find("tax") != std::string::npos);
}
