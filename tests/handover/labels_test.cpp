#include "core/handover/labels.h"
#include "tests/handover/sample.h"

#include <catch2/catch.hpp>

#include <random>

using namespace undercowl;
using namespace undercowl::handover;

namespace {

job::StripStep inBag(const char* id, const char* title, const char* bag, bool refitted) {
    job::StripStep step;
    step.id = id;
    step.title = title;
    step.bag = bag;
    step.hardware = {{2, "screw", "M5", "16 mm", std::nullopt}, {1, "clip", "", "", std::nullopt}};
    if (refitted)
        step.refitted = job::Refitted{};
    return step;
}

job::Job withBags() {
    job::Job job;
    job.id = "0190-a";
    job.number = "2026-014";
    job.steps = {inBag("s1", "side panel", "7", false), inBag("s2", "no bag", "", false),
                 inBag("s3", "left cover", "B 2", true), inBag("s4", "seat", " 7", false)};
    return job;
}

} // namespace

TEST_CASE("a code reads back, whatever the bag is called") {
    std::mt19937 random(20261126);
    for (int i = 0; i < 2000; ++i) {
        BagCode code{"0190-a", ""};
        const int length = 1 + static_cast<int>(random() % 12);
        for (int k = 0; k < length; ++k)
            code.bag += static_cast<char>(random() % 256);
        INFO(written(code));
        CHECK(bagCode(written(code)) == code);
    }
    CHECK(written({"0190-a", "7"}) == "undercowl:bag/0190-a/7");
}

TEST_CASE("a code of something else, or one that was cut, names no bag") {
    for (const char* text : {"", "7", "https://example.org/bag/a/7", "undercowl:bag/", "undercowl:bag/a",
                             "undercowl:bag/a/", "undercowl:bag//7", "undercowl:bag/a/%4",
                             "undercowl:bag/a/%zz", "undercowl:bag/a/7/8", "undercowl:bag/a/7 "}) {
        INFO(text);
        CHECK_FALSE(bagCode(text));
    }
}

TEST_CASE("each bag has one label with all that lies in it") {
    const auto labels = bagLabels(withBags(), sample::machine());
    REQUIRE(labels.size() == 2);
    CHECK(labels[0].bag == "7");
    CHECK(labels[0].steps == std::vector<std::string>{"side panel", "seat"});
    CHECK(labels[0].content.size() == 4);
    CHECK(labels[0].content[0] == "2 x screw M5 x 16 mm");
    CHECK(labels[0].content[1] == "1 x clip");
    CHECK_FALSE(labels[0].open);
    CHECK(labels[0].machine == "Marrowin Tern 125, 1987");
    CHECK(bagCode(labels[0].code) == BagCode{"0190-a", "7"});
    CHECK(labels[1].bag == "B 2");
    CHECK(labels[1].open); // all of it is on again
    CHECK(bagLabels(job::Job{}, {}).empty());
}

TEST_CASE("a scanned bag opens the step that is refitted next from it") {
    job::Job job = withBags();
    CHECK(stepOfBag(job, "7")->id == "s4"); // stripped last goes on first
    job.steps[3].refitted = job::Refitted{};
    CHECK(stepOfBag(job, "7")->id == "s1"); // what is left in it
    CHECK(stepOfBag(job, " b 2 ")->id == "s3");
    CHECK(stepOfBag(job, "9") == nullptr);
    CHECK(stepOfBag(job, "") == nullptr);
}
