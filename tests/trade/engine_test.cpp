#include "core/trade/air.h"
#include "tests/trade/running.h"

#include <cmath>

using namespace undercowl::trade;
using undercowl::reference::highRows;
using undercowl::reference::Row;

// Source: U.S. Standard Atmosphere 1976.
TEST_CASE("Standard air") {
    int checked = 0;
    for (const Row& row : undercowl::reference::rows("isa1976.csv")) {
        INFO(row.name());
        REQUIRE(row["confidence"] == "high");
        const double h = row.number("geopotential_altitude_m");
        CHECK(standardKelvin(h) == Approx(row.number("T_K")).margin(0.0006));
        CHECK(standardPascals(h) == Approx(row.number("p_Pa")).margin(0.06));
        CHECK(standardDensity(h) == Approx(row.number("rho_kg_m3")).margin(0.000006));
        CHECK(standardKelvin(h) / 288.15 == Approx(row.number("theta_T_ratio")).margin(6e-7));
        CHECK(standardPascals(h) / seaLevelPascals == Approx(row.number("delta_p_ratio")).margin(6e-7));
        const double sigma = standardDensity(h) / standardDensity(0);
        CHECK(sigma == Approx(row.number("sigma_density_ratio")).margin(6e-7));
        CHECK(std::sqrt(sigma) == Approx(row.number("sqrt_sigma")).margin(6e-7));
        CHECK(std::pow(sigma, 0.25) == Approx(row.number("fourth_root_sigma")).margin(6e-7));
        if (row.has("published_p_Pa"))
            CHECK(standardPascals(h) == Approx(row.number("published_p_Pa")).margin(0.06));
        const Result r = ran("air-density", {{"altitude", exact(h)}, {"temp", row["t_degC"]}});
        CHECK(number(r, "density") == Approx(row.number("rho_kg_m3")).margin(0.00001));
        CHECK(number(r, "density_altitude") == Approx(h).margin(0.3));
        ++checked;
    }
    CHECK(checked == 11);
}

// Sources: CIPM-2007 (Picard, Davis, Glaeser & Fujii 2008); WMO-No. 8; Buck 1996; SAE J1349 JUN90; a
// published moist-air table.
TEST_CASE("Humid air") {
    CHECK(highRows("humid_air.csv", "formula").size() == 5);
    CHECK(highRows("humid_air.csv", "constant").size() == 16);
    for (const char* record : {"worked_example", "published_check"})
        for (const Row& row : highRows("humid_air.csv", record)) {
            INFO(row.name());
            const double t = row.number("t_c");
            const double p = row.number("p_pa");
            const double h = row.number("rh_percent") / 100;
            const HumidAir air = humidAir(p, t, h);
            CHECK(air.saturationPascals == Approx(row.number("psv_cipm_pa")).margin(0.0006));
            CHECK(air.enhancement == Approx(row.number("enhancement_f")).margin(6e-7));
            CHECK(air.vapourShare == Approx(row.number("xv")).margin(2e-7));
            CHECK(air.compressibility == Approx(row.number("z")).margin(6e-8));
            CHECK(air.density == Approx(row.number("rho_cipm_kg_m3")).margin(1e-6));
            CHECK(magnusPascals(t) == Approx(row.number("es_magnus_pa")).margin(0.0006));
            CHECK(idealHumidDensity(p, t, h) == Approx(row.number("rho_magnus_kg_m3")).margin(1e-6));
            CHECK(humidAir(p, t, 0).density == Approx(row.number("rho_dry_kg_m3")).margin(1e-6));
            const double dry = (p - h * magnusPascals(t)) / 1000;
            CHECK(dry == Approx(row.number("p_dry_kpa")).margin(0.0001));
            CHECK(powerCorrection(dry, t) == Approx(row.number("cf_j1349")).margin(0.00001));
            const Result r =
                ran("air-density",
                    {{"pressure", exact(p) + " Pa"}, {"temp", row["t_c"]}, {"humidity", row["rh_percent"]}});
            CHECK(number(r, "density_ratio") == Approx(row.number("sigma")).margin(1e-6));
            CHECK(number(r, "power_correction") == Approx(row.number("cf_j1349")).margin(0.00001));
            if (row.has("value"))
                CHECK(air.density == Approx(row.number("value")).margin(0.001));
        }
    for (const Row& row : highRows("humid_air.csv", "vapour_pressure_compare")) {
        const double t = row.number("t_c");
        CHECK(humidAir(101325, t, 0).saturationPascals == Approx(row.number("psv_cipm_pa")).margin(0.0006));
        CHECK(magnusPascals(t) == Approx(row.number("es_magnus_pa")).margin(0.0006));
        CHECK(buckPascals(t) == Approx(row.number("value")).margin(0.0006));
    }
}

// Sources: definition; a published two-cycle chart.
TEST_CASE("Two-stroke mixture") {
    const double ounce = 29.5735295625;
    for (const Row& row : highRows("two_stroke.csv", "premix")) {
        INFO(row.name());
        CHECK(number(ran("premix", {{"fuel", "1 L"}, {"ratio", row["case"]}}), "oil") ==
              Approx(row.number("value")).margin(0.00006));
        CHECK(number(ran("premix", {{"fuel", "1 US gal"}, {"ratio", row["ratio"]}}), "oil") / ounce ==
              Approx(row.number("value2")).margin(0.00006));
    }
    for (const Row& row : highRows("two_stroke.csv", "premix_published")) {
        CHECK(number(ran("premix", {{"fuel", "1 L"}, {"ratio", row["case"]}}), "oil") ==
              Approx(row.number("value")));
        CHECK(number(ran("premix", {{"fuel", "1 US gal"}, {"ratio", row["case"]}}), "oil") / ounce ==
              Approx(row.number("value2")).margin(0.05));
    }
    for (const Row& row : highRows("two_stroke.csv", "premix_example")) {
        INFO(row.name());
        const bool finished = row["case"].find("finished") != std::string::npos;
        const std::string fuel = row["case"].substr(0, row["case"].find(" L"));
        const Result r =
            ran("premix", {{"fuel", fuel}, {"ratio", row["ratio"]}, {"measure", finished ? "mix" : "fuel"}});
        CHECK(number(r, "oil") == Approx(row.number("value")).margin(0.0006));
        CHECK(number(r, finished ? "fuel" : "mix") == Approx(row.number("value2")).margin(0.0006));
    }
}

// Sources: slider-crank geometry; published small-engine and port-timing examples.
TEST_CASE("Ignition timing") {
    CHECK(highRows("two_stroke.csv", "formula").size() >= 5);
    for (const char* record : {"published_example", "worked_example"})
        for (const Row& row : highRows("two_stroke.csv", record)) {
            INFO(row.name());
            Typed typed{{"stroke", row["stroke_mm"]}, {"rod", row["rod_mm"]}};
            const bool toDegrees = row["case"].find("mm to degrees") != std::string::npos;
            typed[toDegrees ? "travel" : "degrees"] = toDegrees ? row["value"] : row["angle_deg"];
            const Result r = ran("timing", typed);
            CHECK(number(r, "travel") == Approx(row.number("value")).margin(0.00006));
            CHECK(number(r, "degrees") == Approx(row.number("angle_deg")).margin(0.0001));
        }
    for (const Row& row : highRows("two_stroke.csv", "arc_example")) {
        INFO(row.name());
        const std::string diameter = row["condition"].substr(row["condition"].find_first_of("0123456789"));
        const Result r = ran("timing", {{"stroke", "50"},
                                        {"rod", "100"},
                                        {"degrees", row["angle_deg"]},
                                        {"flywheel_diameter", diameter}});
        CHECK(number(r, "arc") == Approx(row.number("value")).margin(0.00006));
        CHECK(number(r, "chord") == Approx(row.number("value2")).margin(0.00006));
    }
}

// Source: derived from the orifice equation with U.S. Standard Atmosphere 1976 air; same law as in NACA TN
// 1874.
TEST_CASE("Main jets in other air") {
    CHECK(highRows("two_stroke.csv", "jet_assumption").size() == 3);
    for (const Row& row : highRows("two_stroke.csv", "jet_example")) {
        INFO(row.name());
        const std::string& words = row["condition"];
        const double altitude = std::stod(words);
        const double offset = std::stod(words.substr(words.find("ISA") + 3));
        const std::string base =
            words.substr(words.find("base jet ") + 9, words.find(" set at") - words.find("base jet ") - 9);
        Typed typed{{"jet", base},
                    {"altitude_from", "0"},
                    {"altitude_to", exact(altitude)},
                    {"temp_to", exact(15 - 0.0065 * altitude + offset)}};
        const Result byDiameter = ran("jetting", typed);
        CHECK(number(byDiameter, "density_ratio") == Approx(row.number("ratio")).margin(1e-6));
        CHECK(number(byDiameter, "jet") == Approx(row.number("value")).margin(0.0006));
        typed["numbered"] = "flow";
        CHECK(number(ran("jetting", typed), "jet") == Approx(row.number("value2")).margin(0.0006));
    }
}

// Source: definitions as in Heywood 1988.
TEST_CASE("Compression ratio and piston speed") {
    for (const Row& row : highRows("two_stroke.csv", "compression_example")) {
        INFO(row.name());
        const std::string& words = row["condition"];
        Typed typed{{"bore", row["bore_mm"]},
                    {"stroke", row["stroke_mm"]},
                    {"chamber", words.substr(18, words.find(" cm3") - 18)}};
        if (const auto port = words.find("closing, "); port != std::string::npos)
            typed["exhaust_height"] = words.substr(port + 9, words.find(" mm above") - port - 9);
        const Result r = ran("compression-ratio", typed);
        CHECK(number(r, "ratio") == Approx(row.number("value")).margin(0.00006));
        CHECK(number(r, "displacement") == Approx(row.number("value2")).margin(0.00006));
    }
    for (const Row& row : highRows("two_stroke.csv", "piston_speed_example")) {
        const Result r = ran(
            "gearing",
            {{"rpm", row["rpm"]}, {"ratio", "8"}, {"circumference", "1300"}, {"stroke", row["stroke_mm"]}});
        CHECK(number(r, "piston_speed") == Approx(row.number("value")).margin(0.00006));
    }
}

TEST_CASE("Compression, shims, gearing, speedometer") {
    CHECK(number(ran("compression", {{"reading", "1000"}, {"altitude", "0"}}), "sea_level") == Approx(1000));
    const Result shim =
        ran("shim", {{"measured", "0.22"}, {"wanted", "0.15"}, {"shim", "2.50"}, {"step", "0.05"}});
    CHECK(number(shim, "shim") == Approx(2.57));
    CHECK(number(shim, "nearest") == Approx(2.55));
    CHECK(number(shim, "clearance_then") == Approx(0.17));
    CHECK(number(ran("gearing", {{"rpm", "8000"}, {"ratio", "10"}, {"circumference", "1.3 m"}}), "speed") ==
          Approx(62.4));
    CHECK(number(ran("speedometer", {{"shown", "10.4 km"}, {"true_distance", "10"}}), "error") == Approx(4));
    CHECK(number(ran("speedometer", {{"shown", "30 mph"}, {"true_speed", "50 km/h"}}), "error") ==
          Approx((48.28032 / 50 - 1) * 100));
    CHECK(refused("speedometer", {{"shown", "30 mph"}, {"true_distance", "10"}}).field == "shown");
}
