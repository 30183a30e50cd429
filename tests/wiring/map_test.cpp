#include "tests/wiring/switch_cluster.h"

#include <catch2/catch.hpp>

using namespace undercowl::wiring;

TEST_CASE("Numbering mirrors within each row when the connector is turned round") {
    Gathering gathering = switchCluster();
    CHECK(seenFromOtherSide(gathering, 1) == 3);
    CHECK(seenFromOtherSide(gathering, 2) == 2);
    CHECK(seenFromOtherSide(gathering, 4) == 6);
    gathering.places = 5; // the second row is shorter
    CHECK(seenFromOtherSide(gathering, 4) == 5);
    for (int number = 1; number <= gathering.places; ++number)
        CHECK(seenFromOtherSide(gathering, seenFromOtherSide(gathering, number)) == number);
    gathering.kind = GatheringKind::LooseTerminals;
    CHECK(seenFromOtherSide(gathering, 1) == 1);
}

TEST_CASE("Places stay sorted, halves and second wires apart") {
    Gathering gathering;
    gathering.at({Half::Unit, 1, 1});
    gathering.at({Half::Loom, 2, 2});
    gathering.at({Half::Loom, 2, 1});
    gathering.at({Half::Loom, 2, 1}).tag = "A";
    REQUIRE(gathering.held.size() == 3);
    CHECK(gathering.held[0].tag == "A");
    CHECK(gathering.held[1].key.slot == 2);
    CHECK(gathering.held[2].key.half == Half::Unit);
    CHECK(gathering.find({Half::Loom, 1, 1}) == nullptr);
}

TEST_CASE("Codes read back") {
    CHECK(gatheringKindFromCode(code(GatheringKind::SharedEarth)) == GatheringKind::SharedEarth);
    CHECK(sideFromCode(code(Side::MatingFace)) == Side::MatingFace);
    CHECK(halfFromCode(code(Half::Unit)) == Half::Unit);
    CHECK(answerFromCode(code(Answer::AsItShouldBe)) == Answer::AsItShouldBe);
    CHECK(howKnownFromCode(code(HowKnown::RunnerUp)) == HowKnown::RunnerUp);
    CHECK(howKnownFromCode(code(HowKnown::Heard)) == HowKnown::Heard);
    CHECK_FALSE(answerFromCode("as lost"));
}
