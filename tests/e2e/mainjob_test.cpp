// The whole main job in the app's own window by touch: taken in, stripped, wires mapped, left for three
// weeks, refitted with the wires read back, handed over. Then the store and the record are looked at from
// outside.
#include "core/store/store.h"
#include "tests/e2e/demowires.h"
#include "tests/e2e/moments.h"
#include "tests/e2e/phone.h"
#include "tests/platform/tool.h"

#include <catch2/catch.hpp>

#include <filesystem>

using namespace undercowl;
using namespace undercowl::e2e;
using Catch::Contains;

namespace {

constexpr job::TimeMs threeWeeks = job::TimeMs{21} * 24 * 60 * 60 * 1000;

void looksSound(const std::string& shop) {
    const auto opened = store::Store::open(shop);
    REQUIRE(opened);
    const auto report = opened->check();
    REQUIRE(report);
    CHECK(report->faults.empty());
    CHECK(report->mediaFiles == 6); // the same shot twice is one file; and the signature
    const auto jobs = opened->jobs();
    REQUIRE(jobs);
    REQUIRE(jobs->size() == 1);
    CHECK(jobs->front().moment == job::Moment::Done);
    const auto job = opened->job(jobs->front().id);
    REQUIRE(job);
    REQUIRE(job->steps.size() == 2);
    for (const auto& step : job->steps) {
        CHECK(step.refitted);
        CHECK(job::photosAbout(*job, step.id).size() == 1);
    }
    CHECK(job->steps[0].bag == "7");
    CHECK(job->steps[1].bag == "8");
    REQUIRE(job->photos.size() == 6);
    for (const auto& photo : job->photos) {
        const auto media = opened->media(photo.media);
        REQUIRE(media);
        CHECK(std::filesystem::file_size(*media) > 10000);
    }
    REQUIRE(job->gatherings.size() == 1);
    for (std::size_t i = 0; i < truth.size(); ++i) {
        const wiring::PlaceKey key{wiring::Half::Loom, static_cast<int>(i) + 1, 1};
        const auto* place = job->gatherings[0].find(key);
        REQUIRE(place != nullptr);
        for (const auto which : {wiring::Answer::AsFound, wiring::Answer::AsRefitted}) {
            const auto answer = place->answer(which);
            REQUIRE(answer);
            CHECK(colour::code(answer->wire.colour) == truth[i].code);
        }
    }
    for (const auto& check : job->wireChecks)
        CHECK(check.outcome == job::MatchOutcome::Matches);
    CHECK(job->wireChecks.size() == truth.size());
    CHECK(job->handedOver);
    CHECK(job->steps[0].routing == "over the clutch cable");
    REQUIRE(job->steps[0].hardware.at(0).at.size() == 1);
    CHECK(job->steps[0].hardware[0].at[0].x == Approx(0.4).margin(0.02));
    CHECK(job->steps[0].hardware[0].at[0].y == Approx(0.3).margin(0.02));
    REQUIRE(job->rounds.size() == 1);
    CHECK(job->rounds[0].checks[1].answer == job::CheckAnswer::NotDone);
    for (const auto& check : job->rounds[0].checks)
        CHECK(check.answer);
    CHECK(job->proofs.size() == 2);
    REQUIRE(job->costTerms);
    CHECK(job->costTerms->lines.size() == 1);
    REQUIRE(job->signature);
    CHECK(job->signature->name == "Ilse Quandt");
    CHECK(opened->media(job->signature->media));
    CHECK(tests::ctl("store check --store '" + shop + "'").exit == 0);
}

void recordReads(const std::string& shop) {
    std::vector<std::filesystem::path> records;
    for (const auto& file : std::filesystem::directory_iterator(shop + "-records"))
        if (file.path().extension() == ".pdf")
            records.push_back(file.path());
    REQUIRE(records.size() == 1);
    const std::string text = tests::textOfPdf(records.front().string());
    for (const char* words :
         {"Marrowin Tern 125", "1987", "MT125-004711", "Ilse Quandt", "Ada", "stop lamp dead",
          "loom sheath brittle", "brake lever", "unplug switch cluster", "right switch cluster",
          // the record's own words
          "Frame number", "What was found", "Before you ride", "new sheath", "11.90"})
        CHECK_THAT(text, Contains(words));
    for (const Wire& wire : truth)
        CHECK_THAT(text, Contains(wire.code));
}

void mainJob(const Look& look) {
    Phone phone(look);
    phone.open(true);
    begin(phone.hand());
    takeIn(phone.hand());
    lookOver(phone.hand());
    stripLever(phone.hand());
    stripConnector(phone.hand());
    phone.close();
    phone.wait(threeWeeks);
    phone.open(false);
    comeBack(phone.hand());
    refit(phone.hand());
    handOver(phone.hand());
    phone.close();
    looksSound(phone.shop());
    recordReads(phone.shop());
}

} // namespace

TEST_CASE("the main job by touch on a small phone at night") {
    mainJob({360, 640, "night"});
}

TEST_CASE("the main job by touch on a phone by day") {
    mainJob({412, 915, "day"});
}

TEST_CASE("the main job by touch on a desk by day") {
    mainJob({1280, 800, "day"});
}
