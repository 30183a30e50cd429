#include "core/units/format.h"
#include "core/units/parse.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace undercowl::units;

namespace {

AsTyped read(std::string_view text, Dimension dimension) {
    const auto typed = parseQuantity(text, dimension);
    INFO(text);
    if (!typed)
        FAIL(typed.error().message);
    return *typed;
}

std::string refusal(std::string_view text, Dimension dimension) {
    const auto typed = parseQuantity(text, dimension);
    INFO(text);
    REQUIRE_FALSE(typed);
    return typed.error().message;
}

} // namespace

TEST_CASE("Quantities are read as people write them") {
    struct Case {
        std::string_view text;
        Dimension dimension;
        double value;
        std::string_view symbol;
    };
    const Case cases[] = {
        {"25 lbf.ft", Dimension::Torque, 25, "lbf.ft"},
        {"25 ft-lb", Dimension::Torque, 25, "lbf.ft"},
        {"25 ft lbs", Dimension::Torque, 25, "lbf.ft"},
        {"2,4 bar", Dimension::GaugePressure, 2.4, "bar gauge"},
        {"34psi", Dimension::GaugePressure, 34, "psi gauge"},
        {"34 psig", Dimension::GaugePressure, 34, "psi gauge"},
        {"14.7 psia", Dimension::AbsolutePressure, 14.7, "psi absolute"},
        {"2.25 kg/cm2", Dimension::GaugePressure, 2.25, "kgf/cm2 gauge"},
        {"1/2 in", Dimension::Length, 0.5, "in"},
        {"1 1/2\"", Dimension::Length, 1.5, "in"},
        {"1-1/8 in", Dimension::Length, 1.125, "in"},
        {"\u00bd in", Dimension::Length, 0.5, "in"},
        {"0.6 mm", Dimension::Length, 0.6, "mm"},
        {".6mm", Dimension::Length, 0.6, "mm"},
        {"10 kgf.m", Dimension::Torque, 10, "kgf.m"},
        {"1,2 mkg", Dimension::Torque, 1.2, "kgf.m"},
        {"12 N\u00b7m", Dimension::Torque, 12, "N.m"},
        {"12 Nm", Dimension::Torque, 12, "N.m"},
        {"\u22125 \u00b0C", Dimension::Temperature, -5, "degC"},
        {"70F", Dimension::Temperature, 70, "degF"},
        {"4\u202f\u2126", Dimension::Resistance, 4, "ohm"},
        {"3 MOhm", Dimension::Resistance, 3, "Mohm"},
        {"75 %", Dimension::Number, 75, "percent"},
        {"1e-3 V", Dimension::Voltage, 0.001, "V"},
        {"AWG 18", Dimension::Area, 18, "AWG"},
        {"18 awg", Dimension::Area, 18, "AWG"},
        {"0,123 mm", Dimension::Length, 0.123, "mm"},
        {"1.265", Dimension::Number, 1.265, "1"},
    };
    for (const Case& c : cases) {
        INFO(c.text);
        const AsTyped typed = read(c.text, c.dimension);
        CHECK(typed.number.value == Approx(c.value).epsilon(1e-15));
        CHECK(typed.unit.symbol() == c.symbol);
    }
}

TEST_CASE("What could mean two things is refused with the remedy") {
    CHECK(refusal("1,500 km", Dimension::Length).find("write 1500, or 1.500 with a point") !=
          std::string::npos);
    CHECK(refusal("1.234,5 km", Dimension::Length).find("more than one separator") != std::string::npos);
    CHECK(refusal("1,234.5 km", Dimension::Length).find("more than one separator") != std::string::npos);
    CHECK(refusal("1 234 km", Dimension::Length).find("without grouping") != std::string::npos);
    CHECK(refusal("1'234 km", Dimension::Length).find("without grouping") != std::string::npos);
    CHECK(refusal("3 gal", Dimension::Volume).find("US gal or imp gal") != std::string::npos);
    CHECK(refusal("40 mpg", Dimension::Consumption).find("mpg(US)") != std::string::npos);
    CHECK(refusal("4 MOHM", Dimension::Resistance).find("Mohm for megaohm") != std::string::npos);
    CHECK(refusal("3 mpa", Dimension::Stress).find("not a unit") != std::string::npos);
    // Our own keypad has no grouping key, so that there is nothing to doubt.
    CHECK(parseQuantity("1,500 km", Dimension::Length, std::nullopt, Comma::Decimal)->number.value == 1.5);
}

TEST_CASE("A wrong unit is an error that lists what would fit") {
    const auto energy = refusal("5 J", Dimension::Torque);
    CHECK(energy.find("is a unit of energy") != std::string::npos);
    CHECK(energy.find("N.m, cN.m") != std::string::npos);
    CHECK(energy.find("lbf.ft") != std::string::npos);
    CHECK(refusal("2 bar absolute", Dimension::GaugePressure).find("is a unit of absolute pressure") !=
          std::string::npos);
    CHECK(refusal("34 psig", Dimension::AbsolutePressure).find("is a unit of gauge pressure") !=
          std::string::npos);
    CHECK(refusal("5 furlong", Dimension::Length).find("mm, um, cm") != std::string::npos);
    CHECK(refusal("5", Dimension::Length).find("has no unit") != std::string::npos);
    CHECK(refusal("", Dimension::Length).find("not a number") != std::string::npos);
    CHECK(refusal("abc", Dimension::Length).find("not a number") != std::string::npos);
    CHECK(refusal("1/0 in", Dimension::Length).find("divides by zero") != std::string::npos);
    // Two filaments, not one watt.
    for (const char* two : {"35/35 W", "60/55 W", "21/5 W"})
        CHECK(refusal(two, Dimension::Power).find("two values") != std::string::npos);
    CHECK(refusal("1e999 mm", Dimension::Length).find("1e999") != std::string::npos);
    CHECK(refusal("--5 mm", Dimension::Length).find("not a number") != std::string::npos);
}

TEST_CASE("Digits and unit stay as typed") {
    CHECK(read("2,40 bar", Dimension::GaugePressure).text() == "2,40 bar gauge");
    CHECK(read("2,40 bar", Dimension::GaugePressure).number.step == Approx(0.01));
    CHECK(read("1/2 in", Dimension::Length).text() == "1/2 in");
    CHECK(parseQuantity("9", Dimension::Torque, unit(Dimension::Torque, "N.m"))->text() == "9 N.m");
}

TEST_CASE("A converted reading has no more digits than were read") {
    const Unit kilopascal = unit(Dimension::GaugePressure, "kPa gauge");
    CHECK(*read("34 psi", Dimension::GaugePressure).textIn(kilopascal) == "234 kPa gauge");
    CHECK(*read("2.4 bar", Dimension::GaugePressure).textIn(kilopascal) == "240 kPa gauge");
    CHECK(*read("25 lbf.ft", Dimension::Torque).textIn(unit(Dimension::Torque, "N.m")) == "34 N.m");
    CHECK(*read("25.0 lbf.ft", Dimension::Torque).textIn(unit(Dimension::Torque, "N.m")) == "33.9 N.m");
    CHECK_FALSE(read("25 lbf.ft", Dimension::Torque).textIn(unit(Dimension::Energy, "J")));
}

TEST_CASE("Every spelling of the table is read as its own unit, and writing it back gives the same value") {
    for (int index = 0; index < dimensionCount; ++index) {
        const auto dimension = static_cast<Dimension>(index);
        for (const Unit u : unitsOf(dimension)) {
            for (const double value : {0.001, 0.25, 1.0, 7.3, 34.0, 1234.5}) {
                const Quantity q{value, u};
                INFO(format(q));
                const auto back = parseQuantity(withSymbol(formatExact(value), u), dimension);
                REQUIRE(back);
                CHECK(back->unit == u);
                CHECK(back->number.value == value);
                // The margin is for scales with a zero of their own, where 273.15 sets the last digit.
                CHECK(Quantity{q.base(), baseUnit(dimension)}.in(u) ==
                      Approx(value).epsilon(1e-14).margin(1e-12));
                const auto again = read(back->text(), dimension);
                CHECK(again.quantity().value == value);
            }
            for (const std::string& alias : u.entry().aliases)
                if (!alias.empty()) {
                    INFO(alias);
                    REQUIRE(findUnit(alias, dimension));
                    CHECK(*findUnit(alias, dimension) == u);
                }
        }
    }
}
