// What an odometer cannot show is asked back, whichever mark parts thousands where it was typed.
#include "core/job/odometer.h"

#include <catch2/catch.hpp>

using namespace undercowl;

TEST_CASE("A point in an odometer that may part thousands is not taken for a decimal one") {
    const auto doubt = [](const char* typed) {
        const auto read = units::parseNumber(typed, units::Comma::Decimal);
        REQUIRE(read);
        return job::odometerDoubt(*read);
    };
    REQUIRE(doubt("14.250"));
    CHECK(doubt("14.250")->find("type 14250 if that is meant, or 14.2") != std::string::npos);
    CHECK(doubt("14,250"));
    CHECK(doubt("14.25"));
    CHECK_FALSE(doubt("14250"));
    CHECK_FALSE(doubt("14250.3"));
    CHECK_FALSE(doubt("14250,3"));
}
