// Against units_exact.csv, whose factors were worked out in rational arithmetic from the definitions
// (international yard and pound 1959, CGPM 1901, NIST SP 811); each row names its own source.
#include "core/units/quantity.h"
#include "tests/reference/csv.h"

#include <catch2/catch.hpp>

#include <set>

using namespace undercowl::units;
using undercowl::reference::Row;

namespace {

Dimension dimensionOf(const std::string& quantity) {
    const std::map<std::string, Dimension> names{{"torque", Dimension::Torque},
                                                 {"force", Dimension::Force},
                                                 {"pressure", Dimension::PressureDifference},
                                                 {"length", Dimension::Length},
                                                 {"speed", Dimension::Speed},
                                                 {"volume", Dimension::Volume},
                                                 {"mass", Dimension::Mass},
                                                 {"power", Dimension::Power},
                                                 {"consumption", Dimension::Consumption},
                                                 {"temperature", Dimension::Temperature},
                                                 {"temperature_check", Dimension::Temperature}};
    return names.at(quantity);
}

Unit unitNamed(const std::string& symbol, Dimension dimension) {
    const auto found = findUnit(symbol, dimension);
    INFO(symbol);
    REQUIRE(found);
    return *found;
}

} // namespace

TEST_CASE("Conversion factors equal the published exact ones") {
    std::set<std::string> seen;
    for (const Row& row : undercowl::reference::rows("units_exact.csv")) {
        INFO(row.name());
        REQUIRE(row["confidence"] == "high");
        const Dimension dimension = dimensionOf(row["quantity"]);
        const Unit from = unitNamed(row["symbol"], dimension);
        seen.insert(row["quantity"]);
        if (row["quantity"] == "consumption") {
            const Unit to = unit(dimension, "L/100km");
            CHECK(Quantity{1, from}.in(to) == Approx(row.number("factor_to_si")).epsilon(1e-15));
            CHECK(Quantity{50, from}.in(to) == Approx(row.number("factor_to_si") / 50).epsilon(1e-15));
        } else if (row["quantity"] == "temperature") {
            REQUIRE(row["factor_to_si"] == "(F-32)/1.8");
            CHECK(Quantity{100, from}.in(unit(dimension, "degC")) == Approx((100 - 32) / 1.8).epsilon(1e-15));
            CHECK(Quantity{9, unit(Dimension::TemperatureDifference, "degF")}.base() ==
                  Approx(5).epsilon(1e-15));
        } else if (row["quantity"] == "temperature_check") {
            // si_unit holds the unit of the result, factor_to_si the result.
            CHECK(Quantity{row.number("name"), from}.in(unit(dimension, "degC")) ==
                  Approx(row.number("factor_to_si")).epsilon(1e-15).margin(1e-13));
        } else {
            const Unit to = unitNamed(row["si_unit"], dimension);
            CHECK(Quantity{1, from}.in(to) == Approx(row.number("factor_to_si")).epsilon(1e-15));
        }
    }
    CHECK(seen.size() == 11);
}

TEST_CASE("Factors are exact ratios, not rounded numbers") {
    const auto factor = [](Dimension d, const char* symbol) { return unit(d, symbol).entry().factor; };
    // 0.45359237 kg x 9.80665 m/s2 x 0.3048 m, NIST SP 811: 1.3558179483314004 N.m exactly.
    CHECK(factor(Dimension::Torque, "lbf.ft") == Rational{3389544870828501, 2500000000000000});
    CHECK(factor(Dimension::Volume, "US gal") == Rational{3785411784, 1000000});
    CHECK(factor(Dimension::PressureDifference, "torr") == Rational{101325, 760000});
    static_assert(Rational{6, -4} == Rational{-3, 2});
    static_assert(Rational{1, 3} * Rational{3, 4} == Rational{1, 4});
}

TEST_CASE("Wire gauge numbers give the areas of ASTM B258") {
    const Unit awg = unit(Dimension::Area, "AWG");
    // ASTM B258 table: 36 is 0.005 in, 0000 is 0.46 in; 18 is 0.8230 mm2.
    CHECK(Quantity{18, awg}.base() == Approx(0.8230).margin(0.00005));
    CHECK(Quantity{36, awg}.base() == Approx(3.14159265 / 4 * 0.127 * 0.127).epsilon(1e-8));
    CHECK(Quantity{Quantity{14, awg}.base(), baseUnit(Dimension::Area)}.in(awg) == Approx(14));
}
