#include "core/wiring/din72552.h"
#include "tests/reference/csv.h"

#include <catch2/catch.hpp>

using namespace undercowl;

// Source: DIN 72552-2:1971 as quoted in tests/reference/din72552_terminals.csv.
TEST_CASE("Terminal designations are those of DIN 72552-2 that a published copy confirms") {
    std::size_t confirmed = 0;
    for (const auto& row : reference::rows("din72552_terminals.csv")) {
        const auto meaning = wiring::din72552Meaning(row["terminal"]);
        if (row["confidence"] == "high") {
            ++confirmed;
            REQUIRE(meaning);
            CHECK(*meaning == row["meaning"]);
        } else {
            CHECK_FALSE(meaning);
        }
    }
    CHECK(confirmed == wiring::din72552().size());
}
