#include "core/handover/phrases.h"
#include "tests/handover/sample.h"

#include <catch2/catch.hpp>

#include <regex>
#include <set>

using namespace undercowl;
using namespace undercowl::handover;
using sample::holds;
using sample::lines;
using sample::section;

TEST_CASE("the record says which machine it is, why it came and who worked on it") {
    const auto text = lines(sample::job());
    CHECK(text.front() == "Record of work 2025-014");
    const auto machine = section(text, "The machine");
    CHECK(holds(machine, "Machine | Marrowin Tern 125, 1987"));
    CHECK(holds(machine, "Frame number | MT125-004417"));
    CHECK(holds(machine, "Odometer when taken in | 18423\u00A0km"));
    CHECK(holds(machine, "Why it came in | stood six winters"));
    CHECK(holds(machine, "Taken in | 2025-11-24"));
    CHECK(holds(machine, "Work done by | Tove, Bram"));
    CHECK(holds(machine, "Handed over | not yet: this page shows how far the work has got"));
}

TEST_CASE("what is unsafe is told first, in the table of findings and before the ride") {
    const auto text = lines(sample::job());
    const auto found = section(text, "What was found");
    REQUIRE(found.size() == 3);
    CHECK(found.at(1) == "■ unsafe | perished brake hose | still open; to do: renew it");
    CHECK(found.at(2) == "□ note | chafed loom | put right: sleeved");
    const auto heed = section(text, "Before you ride");
    CHECK(holds(heed, "! The work is not finished: 1 of 3 steps are not back together. Do not ride it."));
    CHECK(holds(heed, "! Unsafe and not yet put right: perished brake hose. To do: renew it."));
    CHECK_FALSE(holds(heed, "No unsafe finding is open."));
}

TEST_CASE("a machine is called free of open unsafe findings only when nothing speaks against it") {
    job::Job job = sample::job();
    job.steps.clear();
    job.findings.clear();
    CHECK(holds(section(lines(job), "Before you ride"), "No unsafe finding is open."));
    job.readings.at(0).verdict = "too close to call";
    const auto heed = section(lines(job), "Before you ride");
    CHECK(heed ==
          std::vector<std::string>{"! Too close to its limit to call: battery at rest, 12.61\u00A0V."});
    job.readings.at(0).verdict = "outside";
    CHECK(holds(section(lines(job), "Before you ride"),
                "! Measured outside its limit: battery at rest, 12.61\u00A0V."));
}

TEST_CASE("tasks are summed up, with what they wait for and who did them") {
    const auto done = section(lines(sample::job()), "What was done");
    CHECK(holds(done, "Switch cluster | switch cover; unplug connector | all 2 back together | Tove, Bram"));
    CHECK(holds(done, "Front brake | brake hose | waits for: hose; 0 of 1 back together | Tove"));
    const auto left = section(lines(sample::job()), "What was left");
    CHECK(holds(left, "Not back together: brake hose (bag 3)."));
    CHECK(holds(left, "Front brake waits for: hose."));
}

TEST_CASE("the wiring table tells read places from those that nobody read") {
    const auto wiring = section(lines(sample::job()), "Wiring that was read");
    CHECK(holds(wiring, "right switch cluster: connector with 6 places, numbered as seen from the wire side; "
                        "latch: top"));
    CHECK(holds(wiring, "1 | GN/WH | green with white tracer |  |  | ✓ matches"));
    CHECK(holds(wiring, "2 |  | not read: look at the machine |  |  | "));
    CHECK(holds(wiring, "3 | BK | black | blade 6.3 | stop lamp (54) | not checked"));
    CHECK(holds(wiring, "4 to 6 |  | not read: look at the machine |  |  | "));
}

TEST_CASE("a place that was looked at and holds no wire is told apart from one that nobody read") {
    job::Job job = sample::job();
    auto& place = job.gatherings.at(0).at({wiring::Half::Loom, 5, 1});
    place.empty.at(static_cast<std::size_t>(wiring::Answer::AsFound)) = true;
    auto wiring = section(lines(job), "Wiring that was read");
    CHECK(holds(wiring, "4 |  | not read: look at the machine |  |  | "));
    CHECK(holds(wiring, "5 |  | empty, no wire |  |  | not checked"));
    CHECK(holds(wiring, "6 |  | not read: look at the machine |  |  | "));
    job.wireChecks.push_back({job.gatherings.at(0).id, place.key, job::MatchOutcome::Matches, {}, "", {}});
    wiring = section(lines(job), "Wiring that was read");
    CHECK(holds(wiring, "5 |  | empty, no wire |  |  | \u2713 matches"));
}

TEST_CASE("a wire that does not match, or is not as it should be, is a caution") {
    job::Job job = sample::job();
    auto& place = job.gatherings.at(0).at({wiring::Half::Loom, 1, 1});
    place.answer(wiring::Answer::AsItShouldBe) = sample::wire(colour::Insulation::GN, colour::Insulation::YE);
    place.answer(wiring::Answer::AsItShouldBe)->source = "manual, page 7-12";
    place.answer(wiring::Answer::AsRefitted) = sample::wire(colour::Insulation::GN, colour::Insulation::YE);
    job.wireChecks.at(0).outcome = job::MatchOutcome::DoesNotMatch;
    const auto text = lines(job);
    const auto wiring = section(text, "Wiring that was read");
    CHECK(holds(wiring, "1 | GN/YE | green with yellow tracer |  |  | ☒ does not match"));
    CHECK(holds(wiring, "! Place 1: found with green with white tracer, but it should be green with yellow "
                        "tracer (manual, page 7-12)."));
    CHECK(holds(wiring,
                "! Place 1: found with green with white tracer, refitted with green with yellow tracer."));
    CHECK(holds(section(text, "Before you ride"),
                "! A wire was found that does not match the map: right switch cluster, place 1."));
}

TEST_CASE("a hose or cable says where it runs and how reading it back went, and is a caution when it does "
          "not match") {
    job::Job job = sample::job();
    CHECK(section(lines(job), "Hoses and cables").empty());
    job::StripStep cable;
    cable.id = "throttle";
    cable.title = "throttle cable off";
    job.steps.push_back(cable);
    CHECK(section(lines(job), "Hoses and cables").empty());
    job.steps.back().routing = "left of the headstock, under the wide tie";
    CHECK(section(lines(job), "Hoses and cables") ==
          std::vector<std::string>{
              "Hose or cable | Runs | Ends | On refit",
              "throttle cable off | left of the headstock, under the wide tie |  | not checked"});
    job.steps.back().lineCheck = job::LineCheck{job::MatchOutcome::Matches, "", {}};
    CHECK(holds(section(lines(job), "Hoses and cables"),
                "throttle cable off | left of the headstock, under the wide tie |  | \u2713 matches"));
    CHECK_FALSE(holds(section(lines(job), "Before you ride"),
                      "! A hose or cable does not run as it was found: throttle cable off."));
    job.steps.back().lineCheck =
        job::LineCheck{job::MatchOutcome::DoesNotMatch, "crossed over the brake hose", {}};
    CHECK(holds(section(lines(job), "Hoses and cables"),
                "throttle cable off | left of the headstock, under the wide tie |  | \u2612 does not match"));
    CHECK(holds(
        section(lines(job), "Before you ride"),
        "! A hose or cable does not run as it was found: throttle cable off, crossed over the brake hose."));
}

TEST_CASE("readings carry instrument, limit, its source and the verdict") {
    const auto measured = section(lines(sample::job()), "What was measured");
    CHECK(holds(measured, "battery at rest | 12.61\u00A0V | multimeter, within 0.05 V (k = 2) | at least "
                          "12.4\u00A0V | shop's own record | ✓ within"));
    job::Job job = sample::job();
    job.readings.at(0).verdict.clear();
    job.readings.at(0).low.reset();
    CHECK(holds(
        section(lines(job), "What was measured"),
        "battery at rest | 12.61\u00A0V | multimeter, within 0.05 V (k = 2) | no limit known | shop's own "
        "record | no verdict"));
}

TEST_CASE("rechecks are due at a distance, by a date or both") {
    CHECK(holds(section(lines(sample::job()), "What is due"),
                "brake hose unions | after 100\u00A0km, or by 2025-12-24, whichever comes first"));
    job::Job job = sample::job();
    job.rechecks.at(0).after.reset();
    CHECK(holds(section(lines(job), "What is due"), "brake hose unions | by 2025-12-24"));
}

TEST_CASE("photos of every kind come before a second one of any kind") {
    job::Job job = sample::job();
    for (int i = 0; i < 9; ++i) {
        job::Photo photo;
        photo.media = "strip" + std::to_string(i) + ".jpg";
        photo.purpose = job::PhotoPurpose::Strip;
        job.photos.push_back(photo);
    }
    job::Photo found;
    found.media = "found.jpg";
    found.purpose = job::PhotoPurpose::AsFound;
    found.note = "left side";
    found.takenAt = sample::job().opened.at;
    job.photos.push_back(found);
    const auto photos = section(lines(job), "Photos");
    REQUIRE(photos.size() == 6);
    CHECK(photos.at(0) == "found.jpg | left side (2025-11-24)");
    CHECK(photos.at(5) == "strip4.jpg | while stripping, 1970-01-01");
}

TEST_CASE("every key is there once and every value of it has its place") {
    std::set<std::string_view> keys;
    for (const Phrase& phrase : phrases()) {
        CHECK(keys.insert(phrase.key).second);
        CHECK_FALSE(phrase.english.empty());
    }
    // What the record of the sample says must come from these phrases: an unknown key would leave a gap.
    const Document document =
        ownersRecord(sample::job(), sample::machine(), sample::owner(), sample::mechanics());
    const auto check = [](const Text& text) {
        if (const auto* message = std::get_if<Message>(&text)) {
            INFO(message->key);
            std::string english{englishPhrase(message->key)};
            if (english.empty()) // what the job says to its mechanic is said to the owner in the same words
                english = job::englishPattern(message->key);
            CHECK_FALSE(english.empty());
            const std::regex place{"%[1-9]"};
            const auto places =
                std::distance(std::sregex_iterator(english.begin(), english.end(), place), {});
            CHECK(static_cast<std::size_t>(places) == message->values.size());
        }
    };
    for (const Section& part : document.sections) {
        check(part.title);
        for (const Block& block : part.blocks) {
            if (const auto* paragraph = std::get_if<Paragraph>(&block))
                check(paragraph->text);
            else if (const auto* table = std::get_if<Table>(&block))
                for (const Row& row : table->rows)
                    for (const Text& cell : row.cells)
                        check(cell);
        }
    }
}

TEST_CASE(
    "a part that is not fitted is told where its finding is said to be put right, and under what was left") {
    job::Job job = sample::job();
    job.findings.at(1).settled = true;
    job.findings.at(1).settledHow = "done";
    CHECK(section(lines(job), "What was found").at(1) ==
          "■ unsafe | perished brake hose | said to be put right: done; not fitted: brake hose");
    CHECK(holds(section(lines(job), "What was left"), "Part not fitted: brake hose."));
    job.parts.at(0).state = job::PartState::Fitted;
    CHECK(section(lines(job), "What was found").at(1) == "■ unsafe | perished brake hose | put right: done");
    CHECK_FALSE(holds(section(lines(job), "What was left"), "Part not fitted: brake hose."));
}

TEST_CASE("what the owner complained of stands with its answer, or under what was left") {
    job::Job job = sample::job();
    job.reason = "no horn";
    job.functions = {{"stop lamp", job::FunctionAnswer::DoesNot, "", {}}};
    auto left = section(lines(job), "What was left");
    CHECK(holds(left, "What the owner said was not answered: no horn."));
    CHECK(holds(left, "Did not work when it came in and was not tried again: stop lamp."));
    job.functionsAfter = {{"no horn", job::FunctionAnswer::Works, "new button", {}},
                          {"stop lamp", job::FunctionAnswer::DoesNot, "switch on order", {}}};
    left = section(lines(job), "What was left");
    CHECK_FALSE(holds(left, "What the owner said was not answered: no horn."));
    CHECK(holds(left, "Does not work: stop lamp (switch on order)."));
    const auto proved = section(lines(job), "What was proved");
    CHECK(holds(proved, "no horn | the owner's words | ✓ works: new button"));
    CHECK(holds(proved, "stop lamp | ☒ does not | ☒ does not: switch on order"));
}
