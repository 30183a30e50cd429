#include "core/trade/brake_fluids.h"
#include "tests/trade/running.h"

#include <cmath>

using namespace undercowl::trade;
using undercowl::reference::highRows;
using undercowl::reference::Row;

// Source: 49 CFR 571.116 (FMVSS 116).
TEST_CASE("Brake fluid grades have the boiling points of FMVSS 116") {
    int checked = 0;
    for (const Row& row : undercowl::reference::rows("brake_fluid_fmvss116.csv")) {
        INFO(row.name());
        REQUIRE(row["confidence"] == "high");
        const BrakeFluidGrade* grade = brakeFluidGrade(row["grade"]);
        REQUIRE(grade != nullptr);
        CHECK(grade->colour == row["colour_requirement"]);
        CHECK((grade->family == FluidFamily::Mineral) == !row.has("dry_erbp_min_c"));
        ++checked;
        if (!row.has("dry_erbp_min_c"))
            continue;
        CHECK(grade->dry == row.number("dry_erbp_min_c"));
        CHECK(grade->wet == row.number("wet_erbp_min_c"));
        CHECK(grade->dryFahrenheit == row.number("dry_erbp_min_f"));
        CHECK(grade->wetFahrenheit == row.number("wet_erbp_min_f"));
        const Result same = ran("brake-fluid", {{"in", row["grade"]}, {"new", row["grade"]}});
        CHECK(number(same, "dry_boiling") == row.number("dry_erbp_min_c"));
        CHECK(number(same, "wet_boiling") == row.number("wet_erbp_min_c"));
        CHECK(std::get<bool>(same.find("may_mix")->value));
    }
    CHECK(checked == 5);
}

TEST_CASE("Families of brake fluid never mix") {
    const std::vector<std::string> glycol{"DOT 3", "DOT 4", "dot5.1"};
    for (const std::string& a : glycol) {
        for (const std::string& b : glycol)
            CHECK(std::get<bool>(ran("brake-fluid", {{"in", a}, {"new", b}}).find("may_mix")->value));
        for (const char* other : {"DOT 5", "mineral"}) {
            CHECK_FALSE(
                std::get<bool>(ran("brake-fluid", {{"in", a}, {"new", other}}).find("may_mix")->value));
            CHECK_FALSE(
                std::get<bool>(ran("brake-fluid", {{"in", other}, {"new", a}}).find("may_mix")->value));
        }
    }
    CHECK_FALSE(
        std::get<bool>(ran("brake-fluid", {{"in", "DOT 5"}, {"new", "mineral"}}).find("may_mix")->value));
    CHECK_FALSE(
        std::get<bool>(ran("brake-fluid", {{"in", "unknown"}, {"new", "DOT 4"}}).find("may_mix")->value));
    CHECK(number(ran("brake-fluid", {{"in", "DOT 5.1"}, {"new", "DOT 3"}}), "wet_boiling") == 140);
}

// Sources: UK MOT inspection manual; UNECE R112; 49 CFR 571.108; geometry.
TEST_CASE("Headlamp aim") {
    for (const Row& row : highRows("headlamp_aim.csv", "conversion")) {
        INFO(row.name());
        const double percent = row.number("min_down_percent");
        const double distance = row.number("distance_m");
        CHECK(percent / 100 * distance * 1000 == Approx(row.number("drop_mm")).margin(0.0501));
        CHECK(std::atan(percent / 100) * 180 / 3.14159265358979 ==
              Approx(row.number("angle_deg")).margin(0.0006));
    }
    for (const Row& row : highRows("headlamp_aim.csv", "limit")) {
        INFO(row.name());
        const bool line = row["rule"].find("photometric") != std::string::npos;
        const bool above = row["mounting_height"].find("above") != std::string::npos;
        const Result r = ran("headlamp-aim", {{"lamp_height", above ? "900" : "800"},
                                              {"distance", "10"},
                                              {"rule", line ? "1-percent" : "UK"}});
        CHECK(number(r, "drop_min") == Approx(row.number("min_down_percent") * 100));
        CHECK(number(r, "drop_max") == Approx(row.number("max_down_percent") * 100));
        if (row.has("angle_deg"))
            CHECK(number(r, "angle_min") == Approx(row.number("angle_deg")).margin(0.0006));
    }
    const Row device = highRows("headlamp_aim.csv", "published_example").front();
    CHECK(std::tan(device.number("angle_deg") * 3.14159265358979 / 180) * device.number("distance_m") *
              1000 ==
          Approx(device.number("drop_mm")).margin(0.06));
    const auto turn = [](const char* drop) {
        return shown(ran("headlamp-aim", {{"lamp_height", "800"}, {"distance", "10"}, {"drop", drop}}),
                     "turn");
    };
    CHECK(turn("20") == "down");
    CHECK(turn("100") == "leave");
    CHECK(turn("260") == "up");
    const Typed height{{"lamp_height", "850 mm"}, {"distance", "10 m"}};
    CHECK(number(ran("headlamp-aim", height), "drop_min") == Approx(50));
}

TEST_CASE("Wear runs down to its limit or up to it") {
    CHECK(number(ran("wear", {{"now", "3.5"}, {"new", "5"}, {"limit", "2"}, {"distance", "6000"}}),
                 "remaining") == Approx(6000));
    const Result bore = ran("wear", {{"now", "52.05"},
                                     {"new", "52.00"},
                                     {"limit", "52.10"},
                                     {"distance", "20000"},
                                     {"uncertainty", "0.01"}});
    CHECK(number(bore, "remaining") == Approx(20000).epsilon(1e-6));
    CHECK(verdictOf(bore) == "within");
    const Result gone = ran("wear", {{"now", "1.5"}, {"new", "5"}, {"limit", "2"}, {"distance", "6000"}});
    CHECK(number(gone, "remaining") == 0);
    CHECK(verdictOf(gone) == "outside");
    CHECK(refused("wear", {{"now", "6"}, {"new", "5"}, {"limit", "2"}, {"distance", "1"}}).field == "now");
    CHECK(ran("wear", {{"now", "5"}, {"new", "5"}, {"limit", "2"}, {"distance", "1"}}).find("remaining") ==
          nullptr);
    CHECK(number(ran("flush-volume", {{"reservoir", "20"},
                                      {"line_length", "1"},
                                      {"line_bore", "2"},
                                      {"caliper", "10"},
                                      {"refills", "3"}}),
                 "volume") == Approx(3 * (30 + 3.14159265)));
}
