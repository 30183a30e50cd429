// A new part in place of the old one. Rules of trying: common practice, no source.
#include "core/wiring/carryover.h"

#include "switch_cluster.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <random>
#include <set>

using namespace undercowl::wiring;

namespace {

PlaceKey loom(int number) {
    return {Half::Loom, number, 1};
}

// Functions in the order of places; empty: nothing is known of what it serves.
Gathering oldPart(const std::vector<const char*>& functions) {
    Gathering gathering;
    gathering.places = static_cast<int>(functions.size());
    for (int i = 0; i < gathering.places; ++i)
        gathering.at(loom(i + 1)).answer(Answer::AsFound) =
            answered("BK", "", functions[static_cast<std::size_t>(i)]);
    return gathering;
}

Gathering newPart(const std::vector<const char*>& functions) {
    Gathering gathering;
    gathering.places = static_cast<int>(functions.size());
    for (int i = 0; i < gathering.places; ++i)
        if (const char* function = functions[static_cast<std::size_t>(i)]; *function != 0)
            gathering.at({Half::Unit, i + 1, 1}).answer(Answer::AsItShouldBe) = answered("RD", "", function);
    return gathering;
}

} // namespace

TEST_CASE("Wires go to the places that serve the same, whatever their colour, and the rest is left empty") {
    const auto over =
        carryOver(oldPart({"Stop lamp", "horn"}), newPart({"horn", "hazard", "stop  lamp", "start"}));
    REQUIRE(over.carried.size() == 2);
    CHECK(over.carried[0] == Carried{loom(1), loom(3), "stop lamp"});
    CHECK(over.carried[1] == Carried{loom(2), loom(1), "horn"});
    CHECK(over.leaveEmpty == std::vector{loom(2), loom(4)});
    CHECK(over.trials.empty());
    CHECK(over.withoutPlace.empty());
}

TEST_CASE("Designations that differ outweigh words that agree, and one that agrees outweighs words") {
    Gathering old = oldPart({"headlamp", "brake lamp"});
    old.at(loom(1)).answer(Answer::AsFound)->wire.din = "56a";
    old.at(loom(2)).answer(Answer::AsFound)->wire.din = "54";
    Gathering fresh = newPart({"headlamp", "stop lamp"});
    fresh.at({Half::Unit, 1, 1}).answer(Answer::AsItShouldBe)->wire.din = "56b";
    fresh.at({Half::Unit, 2, 1}).answer(Answer::AsItShouldBe)->wire.din = "54";
    const auto over = carryOver(old, fresh);
    REQUIRE(over.carried.size() == 1);
    CHECK(over.carried[0] == Carried{loom(2), loom(2), "54"});
    CHECK(over.withoutPlace == std::vector{loom(1)});
    CHECK(over.leaveEmpty == std::vector{loom(1)});
}

TEST_CASE("What cannot be matched is measured first, then tried where the fewest places are left") {
    const auto over = carryOver(oldPart({"horn", "", "stop lamp", "battery plus", "earth"}),
                                newPart({"", "stop lamp", "", "stop lamp"}));
    REQUIRE(over.trials.size() == 5);
    for (int i = 0; i < 3; ++i)
        CHECK(over.trials[static_cast<std::size_t>(i)].measured());
    CHECK(over.trials[0].sign == Sign::Carries); // battery: two places
    CHECK(over.trials[1].sign == Sign::Earth);
    CHECK(over.trials[2] == Trial{loom(2), {loom(1), loom(2), loom(3), loom(4)}, Sign::Leads});
    CHECK(over.trials[3] == Trial{loom(1), {loom(1), loom(3)}, Sign::Sounds, "horn"});
    CHECK(over.trials[4] ==
          Trial{loom(3), {loom(2), loom(4)}, Sign::Lights, "stop lamp"}); // two serve the same
    CHECK(over.mostTrials == 4);
    CHECK(over.carried.empty());
    CHECK(over.leaveEmpty.empty()); // any of them may yet be needed
}

TEST_CASE("What was found out by a trial carries from then on") {
    const Gathering old = oldPart({"horn", "left indicator"});
    Gathering fresh = newPart({"", ""});
    CHECK(carryOver(old, fresh).mostTrials == 3); // two for the first, the other may still be wrong
    fresh.at(loom(2)).answer(Answer::AsItShouldBe) = answered("BK", "", "horn");
    const auto over = carryOver(old, fresh);
    CHECK(over.carried == std::vector{Carried{loom(1), loom(2), "horn"}});
    REQUIRE(over.trials.size() == 1);
    CHECK(over.trials[0] == Trial{loom(2), {loom(1)}, Sign::Lights, "left indicator"});
}

TEST_CASE("Over any two parts no wire and no place is lost or given twice, and nothing live is tried") {
    std::mt19937 dice(11);
    const std::vector<const char*> functions{"",        "horn",      "stop lamp", "earth", "battery feed",
                                             "starter", "tail lamp", "ignition"};
    for (int round = 0; round < 500; ++round) {
        std::vector<const char*> had;
        std::vector<const char*> has;
        for (unsigned i = 0; i < 1 + dice() % 8; ++i)
            had.push_back(functions[dice() % functions.size()]);
        for (unsigned i = 0; i < 1 + dice() % 8; ++i)
            has.push_back(functions[dice() % functions.size()]);
        const auto over = carryOver(oldPart(had), newPart(has));
        std::multiset<PlaceKey> wires;
        std::set<PlaceKey> places;
        for (const Carried& each : over.carried) {
            wires.insert(each.wire);
            REQUIRE(places.insert(each.place).second);
            REQUIRE(std::string(had[static_cast<std::size_t>(each.wire.number - 1)]) ==
                    has[static_cast<std::size_t>(each.place.number - 1)]);
        }
        for (const PlaceKey& each : over.leaveEmpty)
            REQUIRE(places.insert(each).second);
        wires.insert(over.withoutPlace.begin(), over.withoutPlace.end());
        for (const Trial& trial : over.trials) {
            wires.insert(trial.wire);
            REQUIRE_FALSE(trial.at.empty());
            const std::string function = had[static_cast<std::size_t>(trial.wire.number - 1)];
            if (function.empty() || function == "starter" || function == "ignition" ||
                function == "battery feed")
                REQUIRE(trial.measured());
            for (const PlaceKey& at : trial.at)
                REQUIRE_FALSE(places.contains(at));
        }
        REQUIRE(wires.size() == had.size());
        REQUIRE(std::set<PlaceKey>(wires.begin(), wires.end()).size() == had.size());
    }
}
