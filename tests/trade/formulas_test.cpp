// The published formulas and constants of tests/reference, each evaluated as it is printed and held against
// what the code works with. A formula that is not known here fails: it must be written down first.
#include "core/trade/air.h"
#include "core/trade/threads.h"
#include "core/trade/vins.h"
#include "tests/trade/running.h"

#include <cmath>
#include <functional>
#include <numbers>

using namespace undercowl::trade;
using std::numbers::pi;
using undercowl::reference::highRows;
using undercowl::reference::Row;

namespace {

// The numbers in a formula's text, in their order: "611.2 exp(17.62 t" gives 611.2 and 17.62.
std::vector<double> numbersIn(const std::string& text) {
    std::vector<double> all;
    for (std::size_t at = 0; at < text.size();) {
        const bool digit = text[at] >= '0' && text[at] <= '9';
        const bool inName = at > 0 && std::isalpha(static_cast<unsigned char>(text[at - 1])) != 0;
        if (!digit || inName) {
            ++at;
            continue;
        }
        std::size_t length = 0;
        all.push_back(std::stod(text.substr(at), &length));
        at += length;
    }
    return all;
}

using Checks = std::map<std::string, std::function<void(const Row&)>>;

void checkAll(const char* file, const char* record, const char* column, const Checks& checks) {
    std::size_t met = 0;
    for (const Row& row : highRows(file, record)) {
        INFO(row.name());
        const auto check = checks.find(row[column]);
        REQUIRE(check != checks.end());
        check->second(row);
        ++met;
    }
    CHECK(met == checks.size());
}

} // namespace

// Source: CIPM-2007 (Picard, Davis, Glaeser & Fujii 2008), from its own constants.
TEST_CASE("Humid air is worked out from the published constants") {
    std::map<std::string, double> c;
    for (const Row& row : highRows("humid_air.csv", "constant"))
        c[row["case"]] = row.number("value");
    REQUIRE(c.size() == 16);
    for (const double t : {-5.0, 0.0, 15.0, 27.0, 40.0})
        for (const double p : {60000.0, 101325.0})
            for (const double h : {0.0, 0.5, 1.0}) {
                INFO(t << " degC, " << p << " Pa, " << h);
                const HumidAir air = humidAir(p, t, h);
                const double kelvin = t + 273.15;
                const double psv = std::exp(c.at("psv A") * kelvin * kelvin + c.at("psv B") * kelvin +
                                            c.at("psv C") + c.at("psv D") / kelvin);
                const double f = c.at("f alpha") + c.at("f beta") * p + c.at("f gamma") * t * t;
                const double x = h * f * psv / p;
                const double z =
                    1 -
                    p / kelvin *
                        (c.at("Z a0") + c.at("Z a1") * t + c.at("Z a2") * t * t +
                         (c.at("Z b0") + c.at("Z b1") * t) * x + (c.at("Z c0") + c.at("Z c1") * t) * x * x) +
                    p * p / (kelvin * kelvin) * (c.at("Z d") + c.at("Z e") * x * x);
                CHECK(air.saturationPascals == Approx(psv).epsilon(1e-12));
                CHECK(air.enhancement == Approx(f).epsilon(1e-12));
                CHECK(air.compressibility == Approx(z).epsilon(1e-12));
            }
}

// Sources: each row its own.
TEST_CASE("The formulas for air are the printed ones") {
    checkAll(
        "humid_air.csv", "formula", "case",
        {{"CIPM-2007",
          [](const Row& row) { // rho = 3.483740e-3 p/(Z T) (1 - 0.3780 xv)
              const auto n = numbersIn(row["value"]);
              const HumidAir air = humidAir(98000, 21, 0.6);
              CHECK(air.density == Approx(n.at(0) * 98000 / (air.compressibility * (21 + 273.15)) *
                                          (n.at(1) - n.at(2) * air.vapourShare))
                                       .epsilon(1e-12));
          }},
         {"Magnus",
          [](const Row& row) { // es = 611.2 exp(17.62 t/(243.12 + t))
              const auto n = numbersIn(row["value"]);
              CHECK(magnusPascals(31) == Approx(n.at(0) * std::exp(n.at(1) * 31 / (n.at(2) + 31))));
          }},
         {"Buck 1996",
          [](const Row& row) { // es = 611.21 exp((18.678 - t/234.5) t/(257.14 + t))
              const auto n = numbersIn(row["value"]);
              CHECK(buckPascals(31) ==
                    Approx(n.at(0) * std::exp((n.at(1) - 31 / n.at(2)) * 31 / (n.at(3) + 31))));
          }},
         {"ideal humid air",
          [](const Row& row) { // rho = (p - e)/(287.05 T) + e/(461.5 T)
              const auto n = numbersIn(row["value"]);
              const double e = 0.7 * magnusPascals(24);
              CHECK(idealHumidDensity(99000, 24, 0.7) ==
                    Approx((99000 - e) / (n.at(0) * 297.15) + e / (n.at(1) * 297.15)));
          }},
         {"J1349 (June 1990 form)", [](const Row& row) { // cf = 1.180 (99/Pd) sqrt((t + 273)/298) - 0.180
              const auto n = numbersIn(row["value"]);
              CHECK(powerCorrection(95, 18) ==
                    Approx(n.at(0) * (n.at(1) / 95) * std::sqrt((18 + n.at(2)) / n.at(3)) - n.at(4)));
          }}});
}

TEST_CASE("The formulas for bolts are the printed ones") {
    checkAll("iso898_fasteners.csv", "formula", "designation",
             {{"As",
               [](const Row& row) { // d2 = d - 0.649519 P, d3 = d - 1.226869 P, equals 0.938194 P
                   const auto n = numbersIn(row["condition"]);
                   for (const Thread m : {Thread{8, 1.25, true}, Thread{10, 1.0, false}}) {
                       const double mean =
                           (m.diameter - n.at(3) * m.pitch + m.diameter - n.at(4) * m.pitch) / 2;
                       CHECK(stressArea(m) == Approx(pi / 4 * mean * mean).epsilon(1e-6));
                       CHECK(stressArea(m) ==
                             Approx(pi / 4 * std::pow(m.diameter - n.at(6) * m.pitch, 2)).epsilon(1e-6));
                   }
               }},
              {"T", [](const Row& row) {
                   CHECK(row["condition"].starts_with("T = K * d * F (T in N.m when d in m and F in N)"));
                   const Result r =
                       ran("bolt-torque", {{"thread", "M8"}, {"class", "8.8"}, {"nut_factor", "0.2"}});
                   CHECK(number(r, "torque") == Approx(0.2 * 0.008 * number(r, "preload")));
               }}});
    const Row conflict = highRows("torque_friction.csv", "k_factor_conflict").front();
    CHECK(conflict["note"].find("the machine service manual torque wins") != std::string::npos);
    CHECK(findCalculation("bolt-torque")->declaration.cautions.front() == "worked out here: the manual wins");
}

TEST_CASE("The formulas for engines are the printed ones") {
    checkAll(
        "two_stroke.csv", "formula", "case",
        {{"piston travel",
          [](const Row& row) {
              CHECK(row["condition"].starts_with(
                  "x = r (1 - cos a) + l - sqrt(l^2 - r^2 sin^2 a), r = stroke/2"));
              const double a = 23 * pi / 180;
              const double r = 57.0 / 2;
              const double l = 110;
              CHECK(number(ran("timing", {{"stroke", "57"}, {"rod", "110"}, {"degrees", "23"}}), "travel") ==
                    Approx(r * (1 - std::cos(a)) + l - std::sqrt(l * l - std::pow(r * std::sin(a), 2))));
          }},
         {"angle from travel",
          [](const Row& row) {
              CHECK(row["condition"] == "cos a = ((r + l - x)^2 + r^2 - l^2) / (2 r (r + l - x))");
              const double r = 57.0 / 2;
              const double l = 110;
              const double s = r + l - 2.5;
              CHECK(number(ran("timing", {{"stroke", "57"}, {"rod", "110"}, {"travel", "2.5"}}), "degrees") ==
                    Approx(std::acos((s * s + r * r - l * l) / (2 * r * s)) * 180 / pi));
          }},
         {"flywheel arc",
          [](const Row& row) {
              CHECK(row["condition"] == "arc = pi D a/360; chord = D sin(a/2)");
              const Result r =
                  ran("timing",
                      {{"stroke", "57"}, {"rod", "110"}, {"degrees", "20"}, {"flywheel_diameter", "96"}});
              CHECK(number(r, "arc") == Approx(pi * 96 * 20 / 360));
              CHECK(number(r, "chord") == Approx(96 * std::sin(10 * pi / 180)));
          }},
         {"compression ratio",
          [](const Row& row) {
              CHECK(row["condition"] == "CR = (Vs + Vc)/Vc with Vs = pi/4 B^2 S");
              const double swept = pi / 4 * 5.2 * 5.2 * 5.8;
              const Result r =
                  ran("compression-ratio", {{"bore", "52"}, {"stroke", "58"}, {"chamber", "18"}});
              CHECK(number(r, "displacement") == Approx(swept));
              CHECK(number(r, "ratio") == Approx((swept + 18) / 18));
          }},
         {"mean piston speed", [](const Row& row) {
              CHECK(row["condition"].find("v = S n/30000 m/s") != std::string::npos);
              CHECK(
                  number(ran("gearing",
                             {{"rpm", "6000"}, {"ratio", "8"}, {"circumference", "1300"}, {"stroke", "58"}}),
                         "piston_speed") == Approx(58.0 * 6000 / 30000));
          }}});
}

// Source: derived from the orifice equation; same law as in NACA TN 1874.
TEST_CASE("Jets scale by the assumption that is named") {
    const Typed high{{"jet", "90"}, {"altitude_from", "0"}, {"altitude_to", "1500"}};
    Typed byFlow = high;
    byFlow["numbered"] = "flow";
    const double sigma = number(ran("jetting", high), "density_ratio");
    const double byDiameter = number(ran("jetting", high), "jet");
    checkAll("two_stroke.csv", "jet_assumption", "case",
             {{"A",
               [&](const Row& row) {
                   CHECK(row["condition"].find("jet DIAMETER proportional to sigma^(1/4)") !=
                         std::string::npos);
                   CHECK(byDiameter == Approx(90 * std::pow(sigma, 0.25)));
               }},
              {"B",
               [&](const Row& row) {
                   CHECK(row["condition"].find("number proportional to sqrt(sigma)") != std::string::npos);
                   CHECK(number(ran("jetting", byFlow), "jet") == Approx(90 * std::sqrt(sigma)));
               }},
              {"C", [&](const Row& row) { // over-corrects: named only as a contrast, and never used
                   CHECK(row["note"].find("over-corrects") != std::string::npos);
                   CHECK(byDiameter > 90 * std::sqrt(sigma) * 1.01);
               }}});
}

TEST_CASE("The formulas for tyre pressure are the printed ones") {
    checkAll("gauge_pressure.csv", "formula", "case",
             {{"constant volume",
               [](const Row& row) {
                   CHECK(row["value"] == "p2_abs = p1_abs x T2/T1; p_gauge = p_abs - p_ambient");
                   const double ambient = standardPascals(0) / 1000;
                   CHECK(number(ran("tyre-pressure-shift",
                                    {{"pressure", "200"}, {"temp_from", "10"}, {"temp_to", "35"}}),
                                "pressure") == Approx((200 + ambient) * 308.15 / 283.15 - ambient));
               }},
              {"reading corrected to the first state", [](const Row& row) {
                   CHECK(row["value"] == "p2_corr = (p2_gauge + amb2) x T1/T2 - amb1");
                   const double ambient = standardPascals(0) / 1000;
                   CHECK(number(ran("leak-down", {{"pressure_1", "200"},
                                                  {"temp_1", "10"},
                                                  {"pressure_2", "195"},
                                                  {"temp_2", "20"},
                                                  {"hours", "24"}}),
                                "loss") == Approx(200 - ((195 + ambient) * 283.15 / 293.15 - ambient)));
               }}});
}

// Source: 49 CFR 565.15.
TEST_CASE("The rules for identification numbers are the printed ones") {
    checkAll("vin_check.csv", "rule", "key",
             {{"check digit",
               [](const Row& row) {
                   CHECK(row["value"] == "sum(value x weight) mod 11; remainder 10 is X");
                   const std::string vin = "1M8GDM9AXKP042788";
                   int sum = 0;
                   for (int place = 1; place <= 17; ++place)
                       sum += *vinValue(vin[static_cast<std::size_t>(place) - 1]) * vinWeight(place);
                   CHECK(sum % 11 == 10);
                   CHECK(shown(ran("vin", {{"number", vin}}), "check_digit") == "X");
               }},
              {"position 7 and the 30-year cycle", [](const Row& row) {
                   CHECK(row["note"].ends_with("a motorcycle year code stays ambiguous by 30 years"));
                   // A letter in place 7 decides nothing for a motorcycle: both years stay.
                   CHECK(shown(ran("vin", {{"number", "1M8GDMAAXKP042788"}}), "years").find("1989, 2019") !=
                         std::string::npos);
               }}});
}

// Sources: IEC 60127; UNECE R37 and IEC 60061.
TEST_CASE("Fuse letters and caps that are easily mistaken are told") {
    const auto told = [](const char* name, const std::string& words) {
        for (const std::string& caution : findCalculation(name)->declaration.cautions)
            if (caution.find(words) != std::string::npos)
                return true;
        return false;
    };
    CHECK(told("wire-and-fuse", highRows("wire_iso6722.csv", "glass_fuse").front()["cap_or_colour"]));
    const Row caps = highRows("wire_iso6722.csv", "bulb_caution").front();
    CHECK(caps["cap_or_colour"] == "PX43t is not P43t");
    CHECK(told("lamp-budget", "H4 (P43t) and HS1 (PX43t)"));
}
