#include "core/wiring/twins.h"
#include "tests/wiring/switch_cluster.h"

#include <catch2/catch.hpp>

using namespace undercowl::wiring;

TEST_CASE("Twins are named with their places until a tag or a terminal tells them apart") {
    Gathering gathering = switchCluster();
    auto groups = twins(gathering, Half::Loom);
    REQUIRE(groups.size() == 1);
    CHECK_FALSE(groups[0].settled());
    CHECK(englishAdvice(groups[0]) ==
          "two grey with red tracer: places 2 and 5: tag them before the connector is unplugged");

    SECTION("terminals that differ") {
        gathering.at({Half::Loom, 2, 1}).answer(Answer::AsFound)->wire.terminal =
            *terminalFromText("blade 6.3");
        CHECK_FALSE(twins(gathering, Half::Loom)[0].settled()); // the other one is still unknown
        gathering.at({Half::Loom, 5, 1}).answer(Answer::AsFound)->wire.terminal = *terminalFromText("bullet");
        groups = twins(gathering, Half::Loom);
        CHECK(groups[0].apartByTerminal);
        CHECK(englishAdvice(groups[0]) ==
              "two grey with red tracer: places 2 and 5: tag them, or tell them apart by "
              "terminal: blade 6.3 and bullet");
    }
    SECTION("one tag is enough for two") {
        gathering.at({Half::Loom, 5, 1}).tag = "A";
        CHECK(twins(gathering, Half::Loom)[0].apartByTag);
    }
    SECTION("three twins need two different tags") {
        gathering.at({Half::Loom, 6, 1}).answer(Answer::AsFound) = answered("GY/RD");
        gathering.at({Half::Loom, 2, 1}).tag = "A";
        CHECK_FALSE(twins(gathering, Half::Loom)[0].settled());
        gathering.at({Half::Loom, 5, 1}).tag = "A";
        CHECK_FALSE(twins(gathering, Half::Loom)[0].settled());
        gathering.at({Half::Loom, 5, 1}).tag = "B";
        CHECK(twins(gathering, Half::Loom)[0].settled());
    }
}

TEST_CASE("Halves do not make twins of each other") {
    Gathering gathering = switchCluster();
    CHECK(twins(gathering, Half::Unit).empty());
    gathering.at({Half::Unit, 1, 1}).answer(Answer::AsFound) = answered("BK");
    CHECK(twins(gathering, Half::Unit).empty());
}
