// Common practice, no source: grades have to be those that the machine's maker names; DOT 5 (silicone) does
// not mix with the glycol fluids DOT 3, 4 and 5.1, which draw water.
#include "core/job/consumable.h"

#include <catch2/catch.hpp>

using namespace undercowl;
using namespace undercowl::job;

namespace {

ConsumableUse fluid(const char* grade, const char* limit, const char* opened) {
    ConsumableUse use;
    use.what = "brake fluid";
    use.grade = grade;
    use.limit = limit;
    use.opened = opened;
    return use;
}

std::vector<std::string> keys(const ConsumableUse& use, int daysOpen = brakeFluidDaysOpen) {
    std::vector<std::string> found;
    for (const Message& message : againstUse(use, *units::parseDate("2026-11-26"), daysOpen))
        found.emplace_back(message.key);
    return found;
}

using Keys = std::vector<std::string>;

} // namespace

TEST_CASE("A grade that the machine allows, freshly opened, has nothing against it") {
    CHECK(keys(fluid("DOT 4", "DOT 3 or DOT 4", "2026-11-20")).empty());
    CHECK(keys(fluid("dot5.1", "DOT 4, DOT 5.1", "2026-11-26")).empty());
}

TEST_CASE("A grade that is not allowed is said, and DOT 5 is not DOT 5.1") {
    CHECK(keys(fluid("DOT 3", "DOT 4", "2026-11-20")) == Keys{"consumable.not-allowed"});
    CHECK(keys(fluid("DOT 5", "DOT 5.1", "2026-11-20")) ==
          Keys{"consumable.not-allowed", "consumable.silicone"});
    CHECK(keys(fluid("DOT 5", "DOT 5", "2020-01-01")).empty()); // silicone draws no water
}

TEST_CASE("What nobody knows is said and not guessed") {
    CHECK(keys(fluid("DOT 4", "", "2026-11-20")) == Keys{"consumable.limit-unknown"});
    CHECK(keys(fluid("", "DOT 4", "2026-11-20")) == Keys{"consumable.grade-unknown"});
    CHECK(keys(fluid("DOT 4", "DOT 4", "")) == Keys{"consumable.opened-unknown"});
    CHECK(keys(fluid("DOT 4", "DOT 4", "3/4/26")) == Keys{"consumable.opened-unclear"});
    CHECK(keys(fluid("DOT 4", "DOT 4", "2026-12-01")) == Keys{"consumable.opened-later"});
}

TEST_CASE("How long an opened container is good is set by the shop, to the day") {
    CHECK(keys(fluid("DOT 4", "DOT 4", "2025-11-26")).empty());
    CHECK(keys(fluid("DOT 4", "DOT 4", "2025-11-25")) == Keys{"consumable.opened-long-ago"});
    CHECK(keys(fluid("DOT 4", "DOT 4", "2026-11-01"), 14) == Keys{"consumable.opened-long-ago"});
}

TEST_CASE("Oil is held against the machine's limit, and does not age in its can") {
    ConsumableUse oil;
    oil.what = "engine oil";
    oil.grade = "SAE 10W-40";
    oil.limit = "SAE 10W-40";
    oil.opened = "2022-01-01";
    CHECK(keys(oil).empty());
    oil.limit = "SAE 20W-50";
    CHECK(keys(oil) == Keys{"consumable.not-allowed"});
    oil.limit.clear();
    CHECK(keys(oil).empty());
}
