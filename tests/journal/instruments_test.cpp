#include "core/journal/fold.h"
#include "core/journal/instruments.h"
#include "tests/journal/ledger.h"

#include <catch2/catch.hpp>

using namespace undercowl;
using namespace undercowl::journal;

namespace {

KeptInstrument wrench(double high = 25) {
    auto made = verdict::torqueWrench("wrench red", verdict::WrenchType::Setting, 'A', 5, high,
                                      units::unit(units::Dimension::Torque, "N.m"), 0.1);
    REQUIRE(made);
    made->calibrated = *units::parseDate("2026-03-01");
    made->due = *units::parseDate("2027-03-01");
    return {"i1", *made, false};
}

} // namespace

TEST_CASE("An instrument is read back as it was kept, and the last word holds") {
    Ledger ledger;
    const Entry& first = ledger.add(instrumentKept(wrench()));
    CHECK_FALSE(shapeProblem(first));
    CHECK(streamKind(first) == StreamKind::Shop);
    auto all = foldInstruments(ledger.entries);
    REQUIRE(all.size() == 1);
    CHECK(all[0].instrument.rangeHigh == 25);
    CHECK(all[0].instrument.limit.percentOfReading == 4);
    CHECK(all[0].instrument.due == units::parseDate("2027-03-01").value());
    CHECK(all[0].instrument.limitSource == wrench().instrument.limitSource);
    ledger.add(instrumentKept(wrench(30)));
    all = foldInstruments(ledger.entries);
    REQUIRE(all.size() == 1);
    const auto* found = instrumentNamed(all, "wrench red", units::Dimension::Torque);
    REQUIRE(found != nullptr);
    CHECK(found->rangeHigh == 30);
    CHECK(instrumentNamed(all, "wrench red", units::Dimension::Voltage) == nullptr);
    auto retired = wrench(30);
    retired.retired = true;
    ledger.add(instrumentKept(retired));
    CHECK(instrumentNamed(foldInstruments(ledger.entries), "wrench red", units::Dimension::Torque) ==
          nullptr);
    CHECK(foldMechanics(ledger.entries).empty());
}

TEST_CASE("An instrument without a limit of error is refused: zero is never assumed") {
    Ledger ledger;
    auto bare = wrench();
    bare.instrument.limit = {};
    const Entry& entry = ledger.add(instrumentKept(bare));
    REQUIRE(shapeProblem(entry));
    CHECK_THAT(*shapeProblem(entry), Catch::Contains("limit of error"));
    CHECK(foldInstruments(ledger.entries).empty());
    CHECK(shapeProblem(ledger.add({"instrument.kept", "shop", "i2", R"({"name":"x"})", {}})));
}
