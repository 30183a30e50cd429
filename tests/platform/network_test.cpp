// Nothing leaves the device. tests/run.sh runs every test in this way; here it is shown that the way holds.
#include "tests/platform/tool.h"

#include <catch2/catch.hpp>

#include <filesystem>

using namespace undercowl::tests;

namespace {

Ran without(const std::string& command) {
    return run(NO_NETWORK, command);
}

} // namespace

TEST_CASE("a program that reaches for the network is ended") {
    constexpr int endedBySigsys = 128 + 31;
    CHECK(without("bash -c 'exec 3<>/dev/udp/127.0.0.1/9'").exit == endedBySigsys);
    CHECK(without("bash -c 'exec 3<>/dev/udp/::1/9'").exit == endedBySigsys);
    CHECK(without("true").exit == 0);
}

TEST_CASE("the command line works without a network") {
    const Scratch scratch;
    const std::string ctl = std::string("'") + UNDERCOWLCTL + "' ";
    const Ran demo =
        without(ctl + "demo --store '" + (scratch / "shop") + "' --out '" + (scratch / "out") + "'");
    INFO(demo.err);
    CHECK(demo.exit == 0);
    CHECK(without(ctl + "backup write '" + (scratch / "1.backup") + "' --store '" + (scratch / "shop") + "'")
              .exit == 0);
}

TEST_CASE("the app works without a network") {
    const Scratch scratch;
    REQUIRE(ctl("demo --only-shop --store '" + (scratch / "shop") + "'").exit == 0);
    const Ran shown =
        without(std::string("env QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software '") + UNDERCOWL +
                "' --store '" + (scratch / "shop") + "' --shot '" + (scratch / "shot.png") + "'");
    INFO(shown.err);
    CHECK(shown.exit == 0);
    CHECK(std::filesystem::file_size(scratch / "shot.png") > 1000);
}
