#include "core/journal/fold.h"
#include "tests/journal/ledger.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <random>

using namespace undercowl;
using namespace undercowl::journal;

namespace {

wiring::PlaceAnswer answered(const char* code) {
    wiring::PlaceAnswer answer;
    answer.wire.colour = *colour::wireColourFromCode(code);
    answer.wire.terminal = *wiring::terminalFromText("blade 6.3");
    answer.wire.function = "stop lamp";
    answer.wire.din = "54";
    answer.wire.sizeMm2 = 0.75;
    answer.mark = wiring::PhotoMark{"photo", 0.25, 0.5};
    answer.probability = 0.97;
    return answer;
}

const wiring::PlaceKey third{wiring::Half::Loom, 3, 1};

wiring::Gathering connector() {
    wiring::Gathering gathering;
    gathering.id = "conn";
    gathering.title = "6-place connector";
    gathering.places = 6;
    gathering.rows = 2;
    gathering.latch = "top";
    gathering.first = wiring::PhotoMark{"photo", 0.1, 0.2};
    gathering.photo = "photo";
    gathering.step = "s2";
    return gathering;
}

// One job with everything that an entry can say, by two devices, with corrections and withdrawals.
Ledger wholeJob() {
    Ledger ledger;
    JobPatch first;
    first.number = "2026-001";
    first.machine = "m";
    first.reason = "no lamps";
    first.odometer = job::TypedValue{"18230", "km"};
    ledger.add(jobOpened("j", first));
    JobPatch more;
    more.works = "starts";
    more.worksNot = "horn";
    more.altitude = job::TypedValue{"12", "m"};
    ledger.add(jobDescribed("j", more), "device-b");
    job::Photo photo;
    photo.id = "photo";
    photo.media = "aa.jpg";
    photo.about = "s2";
    photo.purpose = job::PhotoPurpose::Strip;
    photo.width = 1280;
    photo.height = 960;
    photo.takenAt = 5;
    ledger.add(photoTaken("j", photo));
    ledger.add(taskNamed("j", {"t", "handlebar", false, "", 0}));
    ledger.add(stepStripped("j", stripStep("s1", "mirror off")));
    const Id second = ledger.add(stepStripped("j", stripStep("s2", "unplug conector"))).id;
    ledger.add(stepStripped("j", stripStep("s3", "clamp off")));
    ledger.add(lineChecked("j", "s2", job::MatchOutcome::Matches));
    ledger.add(lineChecked("j", "s2", job::MatchOutcome::DoesNotMatch, "kinked"));
    ledger.add(stepStripped("j", stripStep("s2", "unplug connector"), second));
    ledger.add(gatheringDescribed("j", connector()));
    ledger.add(wireAnswered("j", "conn", third, wiring::Answer::AsFound, answered("GY/RD")));
    const Id wrong = ledger.add(wireAnswered("j", "conn", third, wiring::Answer::AsFound, answered("BK"))).id;
    ledger.add(withdrawn("j", wrong), "device-b");
    ledger.add(wireTagged("j", "conn", third, "A"));
    ledger.add(
        wireChecked("j", {"conn", third, job::MatchOutcome::Matches, wiring::Answer::AsFound, "", {}}));
    ledger.add(taskHeld("j", "t", "a switch"));
    ledger.add(taskResumed("j", "t"));
    ledger.add(findingNoted("j", {"f", "hose cracked", job::Severity::Unsafe, "new hose", false, "", {}}));
    ledger.add(findingSettled("j", "f", "hose renewed"));
    ledger.add(partStated("j", {"p", "hose", "", job::PartState::Ordered, "", "f", {}}));
    ledger.add(partStated("j", {"p", "hose", "", job::PartState::Fitted, "", "f", {}}), "device-b");
    job::Reading reading;
    reading.id = "r";
    reading.what = "axle nut";
    reading.value = {"84", "N.m"};
    reading.repeated = {"83", "84", "85"};
    reading.low = job::TypedValue{"75", "N.m"};
    reading.verdict = "within";
    reading.probability = 0.99;
    ledger.add(readingTaken("j", reading));
    ledger.add(memoKept("j", {"memo", "", "felt loose", "s1", {}, {1500, 4200}}));
    ledger.add(recheckDue("j", {"re", "axle nut", job::TypedValue{"50", "km"}, 7, {}}));
    ledger.add(stepRefitted("j", "s3"));
    const Id hasty = ledger.add(stepRefitted("j", "s2")).id;
    ledger.add(withdrawn("j", hasty));
    ledger.add(jobHandedOver("j", "ride gently"));
    return ledger;
}

} // namespace

TEST_CASE("A job says what its entries said") {
    const Ledger ledger = wholeJob();
    const job::Job job = foldJob("j", ledger.entries);
    CHECK(job.unreadable.empty());
    CHECK(job.number == "2026-001");
    CHECK(job.works == "starts");
    CHECK(job.odometer == job::TypedValue{"18230", "km"});
    REQUIRE(job.steps.size() == 3);
    CHECK(job.steps[1].title == "unplug connector"); // corrected in its place
    CHECK(job.steps[1].said.mechanic == "mechanic-device-a");
    CHECK_FALSE(job.steps[1].refitted); // withdrawn
    CHECK(job.steps[2].refitted);
    REQUIRE(job.steps[1].lineCheck); // kept when its step is corrected; the last one holds
    CHECK(job.steps[1].lineCheck->outcome == job::MatchOutcome::DoesNotMatch);
    CHECK(job.steps[1].lineCheck->note == "kinked");
    CHECK(job.steps[0].hardware == stripStep("", "").hardware);
    const wiring::Place* place = job.gatherings.at(0).find(third);
    REQUIRE(place);
    CHECK(place->tag == "A");
    auto expected = answered("GY/RD");
    expected.entry = place->answer(wiring::Answer::AsFound)->entry;
    CHECK(place->answer(wiring::Answer::AsFound) == expected);
    auto described = job.gatherings[0];
    described.held.clear();
    CHECK(described == connector());
    CHECK_FALSE(job.tasks.at(0).waiting);
    CHECK(job.findings.at(0).settled);
    CHECK(job.parts.at(0).state == job::PartState::Fitted);
    CHECK(job.readings.at(0).low == job::TypedValue{"75", "N.m"});
    CHECK(job.readings.at(0).repeated == std::vector<std::string>{"83", "84", "85"});
    CHECK(job.rechecks.at(0).afterDays == 7);
    CHECK(job.handedOver->note == "ride gently");
    CHECK(job.history.size() == ledger.entries.size());
}

TEST_CASE("Any order and any duplication of entries gives the same job") {
    const Ledger ledger = wholeJob();
    const job::Job expected = foldJob("j", ledger.entries);
    std::mt19937 dice(11);
    for (int round = 0; round < 200; ++round) {
        std::vector<Entry> shuffled = ledger.entries;
        for (int again = 0; again < 10; ++again)
            shuffled.push_back(ledger.entries[dice() % ledger.entries.size()]);
        std::shuffle(shuffled.begin(), shuffled.end(), dice);
        REQUIRE(foldJob("j", shuffled) == expected);
    }
}

TEST_CASE("Entries that arrive in parts, in any order, end in the same job") {
    const Ledger ledger = wholeJob();
    const job::Job expected = foldJob("j", ledger.entries);
    std::mt19937 dice(3);
    std::vector<Entry> arrived;
    std::vector<Entry> waiting = ledger.entries;
    std::shuffle(waiting.begin(), waiting.end(), dice);
    while (!waiting.empty()) {
        arrived.push_back(waiting.back());
        waiting.pop_back();
        static_cast<void>(foldJob("j", arrived)); // whatever is missing, folding does not fail
    }
    CHECK(foldJob("j", arrived) == expected);
}

TEST_CASE("Adding one entry at a time gives the job that folding all of them gives") {
    const Ledger ledger = wholeJob();
    const std::span<const Entry> entries = ledger.entries; // in order
    std::size_t added = 0;
    for (std::size_t count = 0; count < entries.size(); ++count) {
        const job::Job before = foldJob("j", entries.first(count));
        const job::Job after = foldJob("j", entries.first(count + 1));
        job::Job job = before;
        if (foldOnto(job, entries[count])) {
            ++added;
            REQUIRE(job == after);
        } else {
            REQUIRE(job == before);
        }
    }
    CHECK(added > entries.size() / 2);
    CHECK(added < entries.size()); // the withdrawal and the correction are not among them
}

TEST_CASE("Machines, owners and mechanics fold from their own streams") {
    Ledger ledger;
    ledger.add(machineDescribed({"m", "Marrowin", "Tern 125", 1987, "MT125-004417", ""}));
    ledger.add(machineDescribed({"m", "Marrowin", "Tern 125", 1988, "MT125-004417", "blue"}));
    ledger.add(ownerDescribed({"o", "Ilse Okafor", "555 0101", "", ""}));
    ledger.add(mechanicNamed({"b", "Bo"}));
    ledger.add(mechanicNamed({"a", "Ada"}));
    ledger.add(mechanicNamed({"b", "Bodil"}));
    CHECK(foldMachine("m", ledger.entries) ==
          job::Machine{"m", "Marrowin", "Tern 125", 1988, "MT125-004417", "blue"});
    CHECK(foldOwner("o", ledger.entries).name == "Ilse Okafor");
    CHECK(foldMechanics(ledger.entries) == std::vector<job::Mechanic>{{"a", "Ada"}, {"b", "Bodil"}});
}

TEST_CASE("A redacted owner has no name, and the rest still stands") {
    Ledger ledger;
    ledger.add(ownerDescribed({"o", "Ilse Okafor", "", "", ""}));
    redact(ledger.entries[0]);
    CHECK(foldOwner("o", ledger.entries) == job::Owner{"o", "", "", "", ""});
}

TEST_CASE("A place that was said to be empty is kept, until a wire is answered or it is taken back") {
    Ledger ledger;
    ledger.add(jobOpened("j", {}));
    ledger.add(gatheringDescribed("j", connector()));
    ledger.add(placeEmpty("j", "conn", third, wiring::Answer::AsFound)); // nothing to take back
    const auto place = [&] {
        const auto job = foldJob("j", ledger.entries);
        const auto* found = job.gatherings.at(0).find(third);
        return found == nullptr ? wiring::Place{} : *found;
    };
    CHECK_FALSE(place().saidEmpty(wiring::Answer::AsFound));
    ledger.add(placeEmpty("j", "conn", third, wiring::Answer::AsFound, true));
    CHECK(place().saidEmpty(wiring::Answer::AsFound));
    CHECK_FALSE(place().saidEmpty(wiring::Answer::AsRefitted));
    ledger.add(wireAnswered("j", "conn", third, wiring::Answer::AsFound, answered("GN")));
    CHECK_FALSE(place().saidEmpty(wiring::Answer::AsFound));
    ledger.add(placeEmpty("j", "conn", third, wiring::Answer::AsFound, true));
    CHECK(place().saidEmpty(wiring::Answer::AsFound));
    CHECK_FALSE(place().answer(wiring::Answer::AsFound));
    ledger.add(placeEmpty("j", "conn", third, wiring::Answer::AsFound));
    CHECK_FALSE(place().saidEmpty(wiring::Answer::AsFound));
}
