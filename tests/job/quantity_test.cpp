// The words of a measurement tell its quantity, in each of the languages.
#include "core/job/quantity.h"

#include <catch2/catch.hpp>

using undercowl::job::dimensionMeant;
using undercowl::units::Dimension;

TEST_CASE("What is measured tells in which quantity") {
    for (const char* pressure : {"front tyre pressure", "Reifendruck vorn", "pressione gomma anteriore",
                                 "pression pneu avant", "presi\u00F3n neum\u00E1tico", "front tyre, cold"})
        CHECK(dimensionMeant(pressure) == Dimension::GaugePressure);
    for (const char* voltage : {"battery, at rest", "voltage drop, tail lamp earth", "Ladespannung",
                                "charging at 5000 rpm, lamps on", "tensi\u00F3n"})
        CHECK(dimensionMeant(voltage) == Dimension::Voltage);
    for (const char* length :
         {"tread, depth", "rear tyre tread", "Profiltiefe", "valve clearance", "gioco valvole"})
        CHECK(dimensionMeant(length) == Dimension::Length);
    CHECK(dimensionMeant("rear axle nut, torque") == Dimension::Torque);
    CHECK(dimensionMeant("idle speed") == Dimension::RotationalSpeed);
    CHECK(dimensionMeant("Ruhestrom") == Dimension::Current);
    CHECK_FALSE(dimensionMeant("lean angle"));
    for (const char* tension : {"chain tension", "Kettenspannung", "tension de la cha\u00EEne",
                                "spoke tension", "Druckfeder", "compression spring"})
        CHECK_FALSE(dimensionMeant(tension));
    CHECK(dimensionMeant("compression spring, length") == std::nullopt);
    CHECK(dimensionMeant("drive chain, free play") == Dimension::Length);
    CHECK_FALSE(dimensionMeant(""));
}
