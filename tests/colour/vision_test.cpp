#include "core/colour/vision.h"
#include "tests/reference/csv.h"

#include <catch2/catch.hpp>

#include <map>

using namespace undercowl::colour;

TEST_CASE("Colour-vision matrices are the published ones") {
    // Source: Machado, Oliveira and Fernandes 2009, severity 0.5 and 1.0.
    const std::map<std::string, Deficiency> kinds{
        {"protan", Deficiency::Protan}, {"deutan", Deficiency::Deutan}, {"tritan", Deficiency::Tritan}};
    const auto rows = undercowl::reference::rows("cvd_machado2009.csv");
    REQUIRE(rows.size() == 6);
    for (const auto& row : rows) {
        const Vision vision{kinds.at(row["deficiency"]), row.number("severity")};
        const LinearRgb columns[] = {asSeen({1, 0, 0}, vision), asSeen({0, 1, 0}, vision),
                                     asSeen({0, 0, 1}, vision)};
        for (int column = 0; column < 3; ++column) {
            const std::string name(1, static_cast<char>('1' + column));
            CHECK(columns[column].r == Approx(row.number("m1" + name)).margin(1e-6));
            CHECK(columns[column].g == Approx(row.number("m2" + name)).margin(1e-6));
            CHECK(columns[column].b == Approx(row.number("m3" + name)).margin(1e-6));
        }
    }
}

TEST_CASE("Red and green grow alike for a deutan, blue and yellow do not") {
    const Lab brown = toLab(Srgb8{120, 80, 40});
    const Lab green = toLab(Srgb8{80, 110, 40});
    const Vision strong{Deficiency::Deutan, 1.0};
    CHECK(differenceAsSeen(brown, green, strong) < 0.5 * differenceAsSeen(brown, green, {}));
    const Lab blue = toLab(Srgb8{30, 60, 200});
    const Lab yellow = toLab(Srgb8{230, 210, 30});
    CHECK(differenceAsSeen(blue, yellow, strong) > 40.0);
}

TEST_CASE("Severity nought changes nothing, and more changes more") {
    const LinearRgb red{0.6, 0.1, 0.1};
    const LinearRgb same = asSeen(red, {Deficiency::Protan, 0.0});
    CHECK(same.r == Approx(red.r));
    CHECK(asSeen(red, {Deficiency::Protan, 0.4}).r > asSeen(red, {Deficiency::Protan, 0.8}).r);
    CHECK(asSeen(red, {Deficiency::Protan, 9.0}).r == Approx(asSeen(red, {Deficiency::Protan, 1.0}).r));
}
