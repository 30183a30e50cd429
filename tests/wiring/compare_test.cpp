#include "core/wiring/compare.h"
#include "tests/wiring/switch_cluster.h"

#include <catch2/catch.hpp>

using namespace undercowl::wiring;

namespace {

Gathering refittedAs(std::vector<const char*> colours) {
    Gathering gathering = switchCluster();
    for (std::size_t i = 0; i < colours.size(); ++i)
        if (colours[i] != nullptr)
            gathering.at({Half::Loom, static_cast<int>(i) + 1, 1}).answer(Answer::AsRefitted) =
                answered(colours[i]);
    return gathering;
}

std::vector<Difference> differences(const Gathering& gathering) {
    return compare(gathering, Half::Loom, Answer::AsFound, Answer::AsRefitted);
}

} // namespace

TEST_CASE("The same wires in the same places differ in nothing") {
    CHECK(differences(refittedAs({"GN/WH", "GY/RD", "BK", "BN", "GY/RD", "YE"})).empty());
}

TEST_CASE("Two exchanged wires are one swap") {
    const auto found = differences(refittedAs({"GN/WH", "BK", "GY/RD", "BN", "GY/RD", "YE"}));
    REQUIRE(found.size() == 1);
    CHECK(found[0] == Difference{DifferenceKind::Swapped, {{Half::Loom, 2, 1}, {Half::Loom, 3, 1}}});
}

TEST_CASE("Missing, extra and different wires are told apart") {
    auto gathering = refittedAs({"GN/WH", "GY/RD", nullptr, "BU", "GY/RD", "YE"});
    gathering.places = 7;
    gathering.at({Half::Loom, 7, 1}).answer(Answer::AsRefitted) = answered("PK");
    const auto found = differences(gathering);
    REQUIRE(found.size() == 3);
    CHECK(found[0].kind == DifferenceKind::Missing);
    CHECK(found[0].places[0].number == 3);
    CHECK(found[1].kind == DifferenceKind::Different);
    CHECK(found[1].places[0].number == 4);
    CHECK(found[2].kind == DifferenceKind::Extra);
    CHECK(found[2].places[0].number == 7);
}

TEST_CASE("Terminals tell twins apart when both sides know them") {
    auto gathering = refittedAs({"GN/WH", "GY/RD", "BK", "BN", "GY/RD", "YE"});
    const auto set = [&](int number, Answer which, const char* terminal) {
        gathering.at({Half::Loom, number, 1}).answer(which)->wire.terminal = *terminalFromText(terminal);
    };
    set(2, Answer::AsFound, "blade 6.3");
    set(5, Answer::AsFound, "bullet");
    CHECK(differences(gathering).empty());
    set(2, Answer::AsRefitted, "bullet");
    set(5, Answer::AsRefitted, "blade 6.3");
    const auto found = differences(gathering);
    REQUIRE(found.size() == 1);
    CHECK(found[0].kind == DifferenceKind::Swapped);
}
