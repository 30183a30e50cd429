#include "core/units/format.h"

#include <catch2/catch.hpp>

#include <clocale>

using namespace undercowl::units;

TEST_CASE("Digits shown follow the step of the instrument") {
    const Unit torque = unit(Dimension::Torque, "N.m");
    CHECK(formatToStep({22.345, torque}, 0.1) == "22.3 N.m");
    CHECK(formatToStep({22.345, torque}, 0.5) == "22.3 N.m");
    CHECK(formatToStep({22.345, torque}, 1) == "22 N.m");
    CHECK(formatToStep({234.42, unit(Dimension::GaugePressure, "kPa gauge")}, 6.89) == "234 kPa gauge");
    CHECK(formatToStep({22.345, torque}, 0) == "22.34 N.m");
    CHECK(formatToStep({-0.01, torque}, 0.1) == "0.0 N.m");
}

TEST_CASE("Significant digits without padding, independent of locale") {
    CHECK(formatSignificant(1.5) == "1.5");
    CHECK(formatSignificant(0) == "0");
    CHECK(formatSignificant(123456) == "123456");
    CHECK(formatSignificant(0.00012345) == "0.0001234");
    CHECK(format({0.5, unit(Dimension::Number, "percent")}) == "0.5 %");
    CHECK(format({8.66, Unit()}) == "8.66");
    CHECK(formatExact(0.1) == "0.1");
    CHECK(formatExact(1.0 / 3) == "0.3333333333333333");
    std::setlocale(LC_ALL, "de_DE.UTF-8");
    CHECK(formatFixed(1.5, 2) == "1.50");
    std::setlocale(LC_ALL, "C");
}
