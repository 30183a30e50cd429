#include "core/colour/insulation.h"

#include <catch2/catch.hpp>

using namespace undercowl::colour;

TEST_CASE("Every insulation colour reads back from its code in either case") {
    for (const Insulation colour : allInsulations) {
        CHECK(insulationFromCode(code(colour)) == colour);
        std::string small{code(colour)};
        for (char& letter : small)
            letter = static_cast<char>(letter + 32);
        CHECK(insulationFromCode(small) == colour);
    }
    CHECK_FALSE(insulationFromCode("XX"));
    CHECK_FALSE(insulationFromCode(""));
}

TEST_CASE("A wire colour is written base first, joined by a solidus") {
    const WireColour wire{Insulation::GY, Insulation::RD};
    CHECK(code(wire) == "GY/RD");
    CHECK(englishWords(wire) == "grey with red tracer");
    CHECK(wireColourFromCode("gy/rd") == wire);
    CHECK(wireColourFromCode("GY-RD") == wire);
    CHECK(wireColourFromCode("LBU") == WireColour{Insulation::LBU, std::nullopt});
    CHECK_FALSE(wireColourFromCode("GY/"));
    CHECK_FALSE(wireColourFromCode("GY/XX"));
}
