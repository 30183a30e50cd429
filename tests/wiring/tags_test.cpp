#include "core/wiring/tags.h"
#include "tests/wiring/switch_cluster.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <bit>
#include <random>

using namespace undercowl::wiring;
using undercowl::colour::Deficiency;
using undercowl::colour::Vision;

namespace {

undercowl::colour::WireColour wire(const char* code) {
    return *undercowl::colour::wireColourFromCode(code);
}

// The fewest by trying every choice of tagged wires.
int fewestByTrying(const std::vector<const Place*>& places, const Vision& vision) {
    int fewest = int(places.size());
    for (unsigned tagged = 0; tagged < (1U << places.size()); ++tagged) {
        bool apart = true;
        for (std::size_t i = 0; i < places.size(); ++i)
            for (std::size_t j = i + 1; j < places.size(); ++j)
                apart = apart && ((tagged >> i & 1U) != 0 || (tagged >> j & 1U) != 0 ||
                                  !looksAlike(places[i]->answer(Answer::AsFound)->wire.colour,
                                              places[j]->answer(Answer::AsFound)->wire.colour, vision));
        if (apart)
            fewest = std::min(fewest, std::popcount(tagged));
    }
    return fewest;
}

} // namespace

TEST_CASE("Brown and green look alike to a strong deutan and to nobody else") {
    const Vision deutan{Deficiency::Deutan, 1.0};
    CHECK(looksAlike(wire("BN"), wire("GN"), deutan));
    CHECK_FALSE(looksAlike(wire("BN"), wire("GN"), {}));
    CHECK_FALSE(looksAlike(wire("BN"), wire("GN"), {Deficiency::Deutan, 0.0}));
    CHECK_FALSE(looksAlike(wire("BN"), wire("GN"), {Deficiency::Tritan, 1.0}));
    CHECK_FALSE(looksAlike(wire("BU"), wire("YE"), deutan));
    CHECK(looksAlike(wire("GY/RD"), wire("GY/RD"), {}));
    CHECK(looksAlike(wire("BK/RD"), wire("BK/GN"), deutan));
    CHECK_FALSE(looksAlike(wire("BK/RD"), wire("BK/WH"), deutan));
    CHECK(looksAlike(wire("GN/BN"), wire("GN"), deutan)); // the tracer cannot be seen on its base
}

TEST_CASE("One tag is proposed for two twins, and none when they are told apart") {
    Gathering gathering = switchCluster(); // places 2 and 5 are twins, 4 is brown
    auto plan = fewestTags(gathering, Half::Loom, {});
    REQUIRE(plan.toTag.size() == 1);
    CHECK(plan.alike.empty());
    CHECK(englishAdvice(plan) == "tag place 5");
    gathering.at({Half::Loom, 2, 1}).tag = "A";
    plan = fewestTags(gathering, Half::Loom, {});
    CHECK(plan.toTag.empty());
    CHECK(englishAdvice(plan).empty());
}

TEST_CASE("Wires that look alike to one person are named to him with the tags that help") {
    Gathering gathering = switchCluster();
    gathering.at({Half::Loom, 1, 1}).answer(Answer::AsFound) = answered("GN");
    const auto plan = fewestTags(gathering, Half::Loom, {Deficiency::Deutan, 1.0});
    REQUIRE(plan.alike.size() == 1);
    CHECK(englishAdvice(plan) == "places 1 and 4 look alike to you: green and brown; tag places 4 5");
    gathering.at({Half::Loom, 1, 1}).answer(Answer::AsFound)->wire.terminal = *terminalFromText("blade 6.3");
    gathering.at({Half::Loom, 4, 1}).answer(Answer::AsFound)->wire.terminal = *terminalFromText("bullet");
    CHECK(fewestTags(gathering, Half::Loom, {Deficiency::Deutan, 1.0}).alike.empty());
}

TEST_CASE("No fewer tags would do than are proposed") {
    std::mt19937 dice; // always the same
    const char* codes[] = {"BN", "GN", "RD", "OG", "LGN", "YE", "BU",
                           "VT", "GY", "PK", "TQ", "LBU", "BK", "WH"};
    for (int round = 0; round < 60; ++round) {
        Gathering gathering;
        gathering.places = 9;
        for (int number = 1; number <= 9; ++number)
            gathering.at({Half::Loom, number, 1}).answer(Answer::AsFound) = answered(codes[dice() % 14]);
        for (const Deficiency kind :
             {Deficiency::None, Deficiency::Protan, Deficiency::Deutan, Deficiency::Tritan}) {
            const Vision vision{kind, round % 2 == 0 ? 1.0 : 0.5};
            const auto plan = fewestTags(gathering, Half::Loom, vision);
            const auto places = placesOf(gathering, Half::Loom, Answer::AsFound);
            CHECK(int(plan.toTag.size()) == fewestByTrying(places, vision));
            for (const Place* one : places)
                for (const Place* other : places) {
                    const bool tagged = std::count(plan.toTag.begin(), plan.toTag.end(), one) +
                                            std::count(plan.toTag.begin(), plan.toTag.end(), other) >
                                        0;
                    CHECK((one == other || tagged ||
                           !looksAlike(one->answer(Answer::AsFound)->wire.colour,
                                       other->answer(Answer::AsFound)->wire.colour, vision)));
                }
        }
    }
}
