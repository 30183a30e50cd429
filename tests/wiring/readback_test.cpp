#include "core/wiring/readback.h"
#include "tests/wiring/switch_cluster.h"

#include <catch2/catch.hpp>

using namespace undercowl::wiring;

TEST_CASE("Read-back goes by place and names twins") {
    const Gathering gathering = switchCluster();
    const auto items = readBack(gathering, Half::Loom, Answer::AsFound);
    REQUIRE(items.size() == 6);
    CHECK(items[0].key.number == 1);
    CHECK(englishSentence(items[0]) == "place 1: green with white tracer");
    CHECK(items[1].twinOf == std::vector{5});
    CHECK(items[2].twinOf.empty());
}

TEST_CASE("Read-back stops where 'as found' and 'as it should be' differ") {
    Gathering gathering = switchCluster();
    Place& place = gathering.at({Half::Loom, 3, 1});
    place.answer(Answer::AsItShouldBe) = answered("BU", "blade 6.3", "horn");
    SECTION("in colour") {
        const auto items = readBack(gathering, Half::Loom, Answer::AsItShouldBe);
        CHECK(items[2].reads == Answer::AsItShouldBe);
        REQUIRE(items[2].contradicts);
        CHECK(code(items[2].contradicts->colour) == "BK");
        CHECK(englishSentence(items[2]) ==
              "place 3: blue, blade 6.3, horn; stop: as it should be, and the other answer "
              "says black");
        CHECK(items[0].reads == Answer::AsFound); // nothing better is known there
        CHECK_FALSE(items[0].contradicts);
    }
    SECTION("but not where one merely knows more") {
        place.answer(Answer::AsItShouldBe) = answered("BK", "blade 6.3", "earth");
        CHECK_FALSE(readBack(gathering, Half::Loom, Answer::AsFound)[2].contradicts);
        place.answer(Answer::AsFound)->wire.function = "horn";
        CHECK(readBack(gathering, Half::Loom, Answer::AsFound)[2].contradicts);
    }
}

TEST_CASE("A wire that is known only as it should be is read back too") {
    Gathering gathering;
    gathering.at({Half::Loom, 4, 1}).answer(Answer::AsItShouldBe) = answered("RD");
    const auto items = readBack(gathering, Half::Loom, Answer::AsFound);
    REQUIRE(items.size() == 1);
    CHECK(items[0].reads == Answer::AsItShouldBe);
}

TEST_CASE("A place that was said to be empty is read back as such, and a wire in the other answer stops it") {
    Gathering gathering;
    gathering.at({Half::Loom, 2, 1}).empty = {true, false, false};
    gathering.at({Half::Loom, 4, 1}).empty = {true, false, false};
    gathering.at({Half::Loom, 4, 1}).answer(Answer::AsItShouldBe) = answered("RD");
    const auto items = readBack(gathering, Half::Loom, Answer::AsFound);
    REQUIRE(items.size() == 2);
    CHECK(items[0].empty);
    CHECK(items[0].reads == Answer::AsFound);
    CHECK_FALSE(items[0].refitted);
    CHECK(englishSentence(items[0]) == "place 2: empty, no wire");
    CHECK_FALSE(items[0].stops());
    CHECK(items[1].empty);
    CHECK(items[1].reads == Answer::AsFound);
    CHECK(items[1].stops());
    CHECK(englishSentence(items[1]) ==
          "place 4: empty, no wire; stop: as found, and the other answer says red");
    const auto should = readBack(gathering, Half::Loom, Answer::AsItShouldBe);
    REQUIRE(should.size() == 2);
    CHECK(should[0].reads == Answer::AsFound); // nothing better is known there
    CHECK_FALSE(should[0].stops());
    CHECK_FALSE(should[1].empty);
    CHECK(should[1].stops());
    CHECK(englishSentence(should[1]) ==
          "place 4: red; stop: as it should be, and the other answer says empty, no wire");
    gathering.at({Half::Loom, 2, 1}).empty[1] = true;
    CHECK_FALSE(readBack(gathering, Half::Loom, Answer::AsItShouldBe)[0].stops());
    gathering.at({Half::Loom, 2, 1}).empty[2] = true;
    CHECK(readBack(gathering, Half::Loom, Answer::AsFound)[0].refitted);
}
