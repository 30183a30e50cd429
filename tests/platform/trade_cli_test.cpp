// verdict and calc through the real undercowlctl: shapes and exit codes.
#include "tests/platform/tool.h"

#include <catch2/catch.hpp>

using undercowl::tests::ctl;

TEST_CASE("verdict answers in the promised shape and exits by its answer") {
    const std::string limits = " --low '9 N.m' --high '11 N.m' --uncertainty '0.4 N.m'";
    const auto close = ctl("verdict --measured '9.3 N.m'" + limits + " --json");
    CHECK(close.exit == 0);
    CHECK(close.json()["verdict"] == "too close to call");
    // Phi(1.5), as decision_rules.csv has it at 0.3 from a limit: JCGM 106:2012.
    CHECK(close.json()["probability"].get<double>() == Approx(0.9332).margin(0.0001));
    CHECK(close.json()["accept_from"]["value"].get<double>() == Approx(9.4));
    CHECK(close.json()["accept_to"]["unit"] == "N.m");
    CHECK(close.json()["uncertainty"]["k"] == 2);
    CHECK(ctl("verdict --measured '8 N.m'" + limits).exit == 1);
    CHECK(ctl("verdict --measured '9.1 N.m' --rule simple" + limits).exit == 0);
    CHECK(ctl("verdict --measured '9.3 N.m' --low '9 N.m' --json").json()["verdict"].is_null());
    const auto zero = ctl("verdict --measured '9.3 N.m' --low '9 N.m' --uncertainty '0 N.m'");
    CHECK(zero.exit == 2);
    CHECK(zero.err.find("--uncertainty") != std::string::npos);
    const auto plain = ctl("verdict --measured '9.3 N.m' --low 9 --high 11 --uncertainty 0.4 --json");
    CHECK(plain.json()["accept_from"] == close.json()["accept_from"]);
    CHECK(plain.json()["probability"] == close.json()["probability"]);
    CHECK(ctl("verdict --measured '9.3 N.m' --low '9 J' --uncertainty '0.4 N.m'").err.find("N.m, cN.m") !=
          std::string::npos);
}

TEST_CASE("A limit without a unit is meant in the reading's, never the other way round") {
    const auto bare = ctl("verdict --measured '9.3 N.m' --low 9 --high 11 --uncertainty 0.4 --json");
    CHECK(bare.exit == 0);
    CHECK(bare.json() ==
          ctl("verdict --measured '9.3 N.m' --low '9 N.m' --high '11 N.m' --uncertainty '0.4 N.m' --json")
              .json());
    // Beside degrees Fahrenheit a width is one in degrees Fahrenheit: 1.8 degF are 1 K, by definition.
    const auto warm = ctl("verdict --measured '68 F' --low 64.4 --uncertainty 1.8 --json").json();
    const auto kelvin = ctl("verdict --measured '20 C' --low 18 --uncertainty '1 K' --json").json();
    CHECK(warm["probability"].get<double>() == Approx(kelvin["probability"].get<double>()).epsilon(1e-9));
    CHECK(ctl("verdict --measured '2.4 bar' --measured 2.5 --low '29 psi' --uncertainty 0.1").exit == 0);
    const auto reading = ctl("verdict --measured 9.3 --low '9 N.m' --uncertainty 0.4");
    CHECK(reading.exit == 2);
    CHECK(reading.err.find("--measured: \"9.3\" has no unit") != std::string::npos);
    CHECK(reading.err.find("\"9.3 N.m\"") != std::string::npos);
    CHECK(ctl("verdict --measured '9.3 N.m' --high eleven").err.find("--high: \"eleven\"") !=
          std::string::npos);
    CHECK(ctl("verdict --measured '9.3 N.m' --low '9 J'").err.find("--low: \"9 J\" does not fit") !=
          std::string::npos);
}

TEST_CASE("calc lists, shows and runs, and names the input at fault") {
    CHECK(ctl("calc list --json").json()["calculations"].size() == 32);
    CHECK(ctl("calc show premix --json").json()["inputs"][0]["key"] == "fuel");
    const auto ran = ctl("calc run premix fuel='5 L' ratio=50 --json");
    CHECK(ran.exit == 0);
    CHECK(ran.json()["results"]["oil"]["value"].get<double>() == Approx(100));
    CHECK(ran.json()["results"]["oil"]["unit"] == "mL");
    CHECK(ctl("calc run tread depth=0.8 country=UK").exit == 1);
    const auto missing = ctl("calc run premix ratio=50");
    CHECK(missing.exit == 2);
    CHECK(missing.err.find("fuel: is missing") != std::string::npos);
    CHECK(ctl("calc run premix fuel").exit == 2);
    CHECK(ctl("calc run nothing").err.find("premix") != std::string::npos);
}

TEST_CASE("The shop's own instruments are kept, used by name before the ordinary ones, and retired") {
    const undercowl::tests::Scratch scratch;
    const std::string store = " --store " + scratch / "shop";
    const std::string keep =
        "instrument keep multimeter --kind multimeter --high '20 V' --resolution 0.001 --percent "
        "0.1 --digits 1 --calibrated 2026-01-10 --due 2200-01-10";
    CHECK(ctl(keep + store).err.find("--by") != std::string::npos);
    CHECK(ctl(keep + " --by Anna" + store).exit == 0);
    const std::string judge = "verdict --measured '12.31 V' --low '12.3 V' --instrument multimeter --json";
    const auto own = ctl(judge + store).json();
    // JCGM 100: 0.1 % of 12.31 V, 1 mV and half of 1 mV, each over the root of 3.
    CHECK(own["uncertainty"]["standard"].get<double>() == Approx(0.0071364).epsilon(1e-3));
    CHECK(own["cautions"].empty());
    CHECK(ctl("instrument list --json" + store).json()["instruments"][0]["whose"] == "shop");
    CHECK(ctl("instrument keep x --kind multimeter --high 20 --resolution 0.1 --percent 1" + store)
              .err.find("--high") != std::string::npos);
    CHECK(ctl("instrument retire multimeter" + store).exit == 0);
    CHECK(ctl("instrument retire multimeter" + store).exit == 1);
    CHECK(ctl(judge + store).json()["uncertainty"]["standard"].get<double>() >
          0.03); // the ordinary one again
    CHECK(ctl("store check" + store).exit == 0);
}
