// "undercowlctl wires" on the photos of tests/photos.
#include "tests/platform/tool.h"

#include <catch2/catch.hpp>

using Catch::Matchers::Contains;

namespace undercowl {
namespace {

using tests::ctl;

const std::string photos = std::string{UNDERCOWL_TESTS} + "/photos/";

} // namespace

TEST_CASE("wires propose tells every wire with its outline and where a stroke is needed") {
    const auto said = ctl("wires propose '" + photos + "s02.jpg' --json");
    CHECK(said.exit == 0);
    const auto answer = said.json();
    REQUIRE(answer.at("wires").size() == 9);
    for (const auto& wire : answer.at("wires")) {
        CHECK(wire.at("path").size() > 10);
        CHECK(wire.at("width_px").get<double>() > 10.0);
        CHECK(wire.at("perhaps").is_null());
    }
    CHECK(answer.at("complete") == true);
    CHECK(answer.at("unfollowed").empty());

    const auto words = ctl("wires propose '" + photos + "y24.jpg'");
    CHECK(words.exit == 0);
    CHECK_THAT(words.out, Contains("BU/YE"));

    const auto some = ctl("wires propose '" + photos + "s01.jpg'");
    CHECK(some.exit == 0);
    CHECK_THAT(some.out, Contains("stroke across the wires there"));
}

TEST_CASE("wires propose refuses a mouth outside the photo and names the option") {
    const auto said = ctl("wires propose '" + photos + "s01.jpg' --mouth 10,10 99999,10");
    CHECK(said.exit == 2);
    CHECK(said.out.empty());
    CHECK_THAT(said.err, Contains("--mouth"));
    CHECK_THAT(said.err, Contains("keep it inside"));
}

} // namespace undercowl
