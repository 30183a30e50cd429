#include "core/job/cautions.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace undercowl::job;

// Common practice, no source.
TEST_CASE("The words of a step's title bring the usual cautions") {
    CHECK(cautionsFor("Unplug 6-place connector") == std::vector<std::string>{"battery-negative-off"});
    const auto brake = cautionsFor("Front BRAKE caliper off");
    CHECK(brake == std::vector<std::string>{"brake-dust", "brake-fluid", "brake-proof"});
    CHECK(cautionsFor("left mirror off").empty());
}

TEST_CASE("Every caution that a title can bring has its sentence") {
    for (const char* title : {"battery", "tank", "rear wheel", "spark plug", "silencer", "clutch cover"})
        for (const std::string& key : cautionsFor(title))
            CHECK_FALSE(englishCaution(key).empty());
    CHECK(englishCaution("nonsense").empty());
    CHECK(cautions().size() >= 10);
}
