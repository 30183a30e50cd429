#include "core/colour/distribution.h"

#include <catch2/catch.hpp>

using namespace undercowl::colour;

TEST_CASE("Each insulation is likeliest at its own mean") {
    for (const Insulation measured : allInsulations)
        for (const Insulation other : allInsulations)
            if (other != measured) {
                INFO(code(measured) << " against " << code(other));
                CHECK(logDensity(measured, distribution(measured).mean) >
                      logDensity(other, distribution(measured).mean));
            }
}

TEST_CASE("A far colour is unlikely, but never impossible") {
    const double far = logDensity(Insulation::BK, {100.0, 60.0, 60.0});
    CHECK(far < logDensity(Insulation::BK, {20.0, 0.0, 0.0}) - 10.0);
    CHECK(far > -60.0);
}
