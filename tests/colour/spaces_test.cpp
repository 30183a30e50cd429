#include "core/colour/adaptation.h"
#include "core/colour/difference.h"
#include "core/colour/spaces.h"
#include "tests/reference/csv.h"

#include <catch2/catch.hpp>

using namespace undercowl::colour;

TEST_CASE("CIEDE2000 gives the published differences") {
    // Source: Sharma, Wu and Dalal 2005, table 1, all 34 pairs.
    const auto pairs = undercowl::reference::rows("ciede2000_pairs.csv");
    REQUIRE(pairs.size() == 34);
    for (const auto& row : pairs) {
        const Lab one{row.number("L1"), row.number("a1"), row.number("b1")};
        const Lab other{row.number("L2"), row.number("a2"), row.number("b2")};
        INFO("pair " << row["pair"]);
        CHECK(ciede2000(one, other) == Approx(row.number("dE00")).margin(0.00005));
        CHECK(ciede2000(other, one) == Approx(row.number("dE00")).margin(0.00005));
        CHECK(ciede2000(one, one) == 0.0);
    }
}

TEST_CASE("sRGB to CIELAB agrees with the published corners and chart") {
    // Source: IEC 61966-2-1 and CIE 15 for the corners; McCamy, Marcus and Davidson 1976 for the chart's
    // patches.
    const auto rows = undercowl::reference::rows("srgb_lab.csv");
    REQUIRE(rows.size() == 32);
    for (const auto& row : rows) {
        const Srgb8 pixel{static_cast<std::uint8_t>(row.number("r8")),
                          static_cast<std::uint8_t>(row.number("g8")),
                          static_cast<std::uint8_t>(row.number("b8"))};
        const Lab lab = toLab(pixel);
        INFO(row["name"]);
        CHECK(lab.l == Approx(row.number("lab_d65_L")).margin(0.01));
        CHECK(lab.a == Approx(row.number("lab_d65_a")).margin(0.01));
        CHECK(lab.b == Approx(row.number("lab_d65_b")).margin(0.01));
    }
}

TEST_CASE("The chart adapted to D50 lies near its maker's values") {
    // Source: the same chart; its maker gives Lab under D50. The file's own Bradford figure must come out
    // again.
    constexpr Xyz d50{0.96422, 1.0, 0.82521}; // ICC.1, profile connection space
    for (const auto& row : undercowl::reference::rows("srgb_lab.csv")) {
        if (row["published_white"] != "D50")
            continue;
        const Srgb8 pixel{static_cast<std::uint8_t>(row.number("r8")),
                          static_cast<std::uint8_t>(row.number("g8")),
                          static_cast<std::uint8_t>(row.number("b8"))};
        const Lab lab = toLab(adapt(toXyz(toLinear(pixel)), d65White, d50, ConeSpace::Bradford), d50);
        const Lab published{row.number("published_L"), row.number("published_a"), row.number("published_b")};
        INFO(row["name"]);
        CHECK(ciede2000(lab, published) == Approx(row.number("de00_own_d50_vs_published")).margin(0.02));
    }
}

TEST_CASE("Every pixel value survives the way through light, XYZ and Lab") {
    for (int value = 0; value < 256; ++value) {
        const Srgb8 pixel{static_cast<std::uint8_t>(value), static_cast<std::uint8_t>(255 - value),
                          static_cast<std::uint8_t>((value * 7) % 256)};
        CHECK(toSrgb8(toLinear(pixel)) == pixel);
        CHECK(toSrgb8(toLinear(toXyz(toLab(pixel)))) == pixel);
    }
}

TEST_CASE("Adaptation maps white to white and can be undone") {
    const Xyz lamp = planckianWhite(2856.0);
    // Source: CIE illuminant A, x = 0.44758, y = 0.40745.
    CHECK(lamp.x / (lamp.x + lamp.y + lamp.z) == Approx(0.44758).margin(0.001));
    CHECK(lamp.y / (lamp.x + lamp.y + lamp.z) == Approx(0.40745).margin(0.001));
    for (const ConeSpace space : {ConeSpace::Cat02, ConeSpace::Bradford}) {
        const Xyz white = adapt(lamp, lamp, d65White, space);
        CHECK(white.x == Approx(d65White.x).margin(1e-9));
        CHECK(white.y == Approx(d65White.y).margin(1e-9));
        CHECK(white.z == Approx(d65White.z).margin(1e-9));
        const Xyz colour{0.2, 0.1, 0.4};
        const Xyz back = adapt(adapt(colour, lamp, d65White, space), d65White, lamp, space);
        CHECK(back.x == Approx(colour.x).margin(1e-9));
        CHECK(back.y == Approx(colour.y).margin(1e-9));
        CHECK(back.z == Approx(colour.z).margin(1e-9));
    }
}
