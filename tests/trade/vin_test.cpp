#include "core/trade/vins.h"
#include "tests/trade/running.h"

using namespace undercowl::trade;
using undercowl::reference::highRows;
using undercowl::reference::Row;

namespace {

bool valid(const std::string& number) {
    return std::get<bool>(ran("vin", {{"number", number}}).find("valid")->value);
}

} // namespace

// Sources: 49 CFR 565.15 tables III to VII, its sample calculation, and published test vectors; each row its
// own.
TEST_CASE("Check digits") {
    for (const Row& row : highRows("vin_check.csv", "transliteration"))
        CHECK(vinValue(row["key"].front()) == std::stoi(row["value"]));
    for (const Row& row : highRows("vin_check.csv", "not_allowed"))
        CHECK_FALSE(vinValue(row["key"].front()));
    for (const Row& row : highRows("vin_check.csv", "weight"))
        CHECK(vinWeight(std::stoi(row["key"])) == std::stoi(row["value"]));
    for (const Row& row : highRows("vin_check.csv", "valid")) {
        INFO(row.name());
        CHECK(valid(row["vin"]));
        CHECK(vinSum(row["vin"]) == std::stoi(row["value"]));
        CHECK(shown(ran("vin", {{"number", row["vin"]}}), "check_digit") == row["computed_check"]);
    }
    for (const Row& row : highRows("vin_check.csv", "invalid")) {
        INFO(row.name());
        CHECK_FALSE(valid(row["vin"]));
        if (row.has("computed_check"))
            CHECK(shown(ran("vin", {{"number", row["vin"]}}), "check_digit") == row["computed_check"]);
    }
    // What the digit cannot see: the result warns of it.
    for (const Row& row : highRows("vin_check.csv", "undetected_change")) {
        CHECK(valid(row["vin"]));
        CHECK(ran("vin", {{"number", row["vin"]}}).cautions.front().find("does not prove") !=
              std::string::npos);
    }
}

TEST_CASE("Year codes stay ambiguous by thirty years") {
    for (const Row& row : highRows("vin_check.csv", "model_year")) {
        CHECK(vinYear(row["key"].front()) == std::stoi(row["value"]));
        CHECK(*vinYear(row["key"].front()) + 30 == std::stoi(row["value2"]));
    }
    for (const char c : {'I', 'O', 'Q', 'U', 'Z', '0'})
        CHECK_FALSE(vinYear(c));
    REQUIRE(highRows("vin_check.csv", "rule").size() == 2);
    const Result both = ran("vin", {{"number", "1M8GDM9AXKP042788"}});
    CHECK(shown(both, "years") == "1989, 2019");
    CHECK(shown(ran("vin", {{"number", "1M8GDM9AXKP042788"}, {"today", "2000-01-01"}}), "years") == "1989");
}

TEST_CASE("Plain frame numbers have no check digit") {
    const Result plain = ran("vin", {{"number", "QX1T 123456"}});
    CHECK(std::get<bool>(plain.find("valid")->value));
    CHECK(shown(plain, "check_digit") == "no check digit in this scheme");
    CHECK(refused("vin", {{"number", "1"}}).field == "number");
}
