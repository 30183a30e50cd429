#include "core/sight/compare.h"

#include <catch2/catch.hpp>

#include <initializer_list>
#include <string>

using namespace undercowl;
using sight::ChangeKind;
using sight::CompareVerdict;
using sight::WireReading;

namespace {

struct Seen {
    const char* wire;
    double probability{0.97};
    const char* other{nullptr}; // takes most of what is left
    double at{-1.0};            // along the stroke; evenly spaced when left out
};

std::vector<WireReading> row(std::initializer_list<Seen> wires) {
    std::vector<WireReading> readings;
    for (const Seen& seen : wires) {
        WireReading reading;
        reading.candidates.push_back({*colour::wireColourFromCode(seen.wire), seen.probability});
        if (seen.other != nullptr)
            reading.candidates.push_back(
                {*colour::wireColourFromCode(seen.other), 0.97 * (1.0 - seen.probability)});
        reading.at = {seen.at >= 0.0 ? seen.at : 20.0 * double(readings.size()), 100.0};
        readings.push_back(reading);
    }
    return readings;
}

void checkChange(const sight::Comparison& comparison, ChangeKind kind, const std::vector<int>& places) {
    REQUIRE(comparison.verdict == CompareVerdict::Changed);
    REQUIRE(comparison.changes.size() == 1);
    CHECK(comparison.changes[0].kind == kind);
    CHECK(comparison.changes[0].places == places);
}

} // namespace

TEST_CASE("The same wires are the same") {
    const auto wires = row({{"BK"}, {"RD/WH"}, {"GN"}, {"BU"}});
    CHECK(sight::compare(wires, wires).verdict == CompareVerdict::Same);
    CHECK(sight::compare(wires, wires).before.size() == 4);
}

TEST_CASE("A swap is found with both places") {
    checkChange(sight::compare(row({{"BK"}, {"RD"}, {"GN"}, {"BU"}}), row({{"BK"}, {"BU"}, {"GN"}, {"RD"}})),
                ChangeKind::Swapped, {2, 4});
}

TEST_CASE("A wire that is gone, or new, is found by order") {
    const auto four = row({{"BK"}, {"RD"}, {"GN"}, {"BU"}});
    checkChange(sight::compare(four, row({{"BK"}, {"GN"}, {"BU"}})), ChangeKind::Missing, {2});
    checkChange(sight::compare(row({{"BK"}, {"GN"}, {"BU"}}), four), ChangeKind::Extra, {2});
    // Which of two twins side by side has gone is guessed from the gap alone: too little to be said.
    CHECK(sight::compare(row({{"BK"}, {"RD"}, {"RD"}, {"BU"}, {"GN"}}), row({{"BK"}, {"RD"}, {"BU"}, {"GN"}}))
              .verdict == CompareVerdict::CannotTell);
}

TEST_CASE("What is hardly a wire does not count as one that went missing or was added") {
    auto five = row({{"BK"}, {"RD"}, {"GN"}, {"BU"}, {"YE"}});
    const auto four = row({{"BK"}, {"RD"}, {"GN"}, {"BU"}});
    checkChange(sight::compare(four, five), ChangeKind::Extra, {5});
    five[4].plainness = 0.3;
    CHECK(sight::compare(four, five).verdict == CompareVerdict::CannotTell);
    CHECK(sight::compare(five, four).verdict == CompareVerdict::CannotTell);
}

TEST_CASE("A wire of another colour is different") {
    checkChange(sight::compare(row({{"BK"}, {"RD", 0.9995}, {"GN"}, {"BU"}, {"WH"}, {"VT"}}),
                               row({{"BK"}, {"YE", 0.9995}, {"GN"}, {"BU"}, {"WH"}, {"VT"}})),
                ChangeKind::Different, {2});
}

TEST_CASE("Twins that were exchanged look the same and are called the same") {
    const auto twins = row({{"GY/RD"}, {"BK"}, {"GY/RD"}});
    CHECK(sight::compare(twins, twins).verdict == CompareVerdict::Same);
}

TEST_CASE("A doubtful colour does not make a change") {
    const auto clear = row({{"BK"}, {"RD"}, {"GN"}, {"BU"}});
    const auto dim = row({{"BK"}, {"BN", 0.6, "RD"}, {"GN"}, {"BU"}});
    CHECK(sight::compare(clear, dim).verdict != CompareVerdict::Changed);
}

TEST_CASE("A swap of two doubtful wires cannot be told") {
    const auto before = row({{"BK"}, {"BN", 0.55, "RD"}, {"GN"}, {"RD", 0.55, "BN"}});
    const auto after = row({{"BK"}, {"RD", 0.55, "BN"}, {"GN"}, {"BN", 0.55, "RD"}});
    CHECK(sight::compare(before, after).verdict == CompareVerdict::CannotTell);
}

TEST_CASE("Rows that have nothing in common cannot be told") {
    CHECK(sight::compare(row({{"BK"}, {"RD"}}), row({{"GN"}, {"BU"}, {"YE"}, {"WH"}})).verdict ==
          CompareVerdict::CannotTell);
    CHECK(sight::compare(row({{"BK"}, {"RD"}, {"GN"}, {"BU"}}), row({{"WH"}, {"YE"}, {"PK"}, {"VT"}}))
              .verdict == CompareVerdict::CannotTell);
    CHECK(sight::compare({}, {}).verdict == CompareVerdict::CannotTell);
}
