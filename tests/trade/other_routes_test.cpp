// Machine, tyre and engine figures recomputed over random inputs by routes that share no formula with the
// code: balances, geometry, halving, step-by-step sums. Where a source is needed it stands beside the check.
#include "tests/trade/other_routes.h"

#include <array>
#include <numbers>

using namespace undercowl::trade;
using std::numbers::pi;

TEST_CASE("Torque by statics and by the inclined plane") {
    Random random;
    for (int i = 0; i < trials; ++i) {
        // The hand's force makes SETTING on the wrench's own arm and the wanted torque on the bolt's.
        const double torque = random.between(5, 200);
        const double arm = random.between(150, 600);
        const double adapter = random.between(0, 120);
        const double angle = random.between(-180, 180);
        const Result set = ran("torque-adapter", {{"torque", exact(torque)},
                                                  {"wrench_length", exact(arm)},
                                                  {"adapter_length", exact(adapter)},
                                                  {"angle", exact(angle)}});
        const double force = number(set, "setting") / arm;
        const double boltX = arm + adapter * std::cos(angle * pi / 180);
        CHECK(force * boltX == Approx(torque));

        // A bolt is a ramp wound round a cylinder: T = F d2/2 tan(slope + friction) + F mu D/2. The
        // textbooks' sum leaves out a product of small angles, below 1.5 % at such frictions.
        struct Thread {
            const char* name;
            double d, pitch;
        };
        const Thread thread =
            std::array{Thread{"M6", 6, 1}, Thread{"M8", 8, 1.25}, Thread{"M10", 10, 1.5},
                       Thread{"M12", 12, 1.75}}[static_cast<std::size_t>(random.whole(0, 3))];
        const double mu = random.between(0.08, 0.2);
        const double share = random.between(0.3, 0.9);
        const double bearing = 1.3 * thread.d;
        const Result bolt = ran("bolt-torque", {{"thread", thread.name},
                                                {"class", "8.8"},
                                                {"friction", exact(mu)},
                                                {"bearing_diameter", exact(bearing)},
                                                {"utilisation", exact(share)}});
        // ISO 898-1: 580 MPa proof stress of 8.8 up to M16; stress area between pitch and minor diameter
        // (ISO 724: 0.6495 P and 1.2269 P below the nominal); the standard's table is rounded.
        const double middle = thread.d - (0.6495 + 1.2269) / 2 * thread.pitch;
        const double preload = share * 580 * pi / 4 * middle * middle;
        CHECK(number(bolt, "preload") == Approx(preload).epsilon(0.004));
        const double d2 = thread.d - 0.6495 * thread.pitch;
        const double ramp = std::atan(thread.pitch / (pi * d2)) + std::atan(mu / std::cos(pi / 6));
        const double turned = number(bolt, "preload") * (d2 / 2 * std::tan(ramp) + mu * bearing / 2) / 1000;
        CHECK(number(bolt, "torque") == Approx(turned).epsilon(0.015));
        const Result back = ran("bolt-preload", {{"thread", thread.name},
                                                 {"class", "8.8"},
                                                 {"friction", exact(mu)},
                                                 {"bearing_diameter", exact(bearing)},
                                                 {"torque", exact(number(bolt, "torque"))}});
        // The standard's table rounds its proof loads, by half a per cent at M6.
        CHECK(number(back, "share_of_proof") == Approx(share).epsilon(0.006));
    }
}

TEST_CASE("Tyres by counting the air in them") {
    Random random;
    for (int i = 0; i < trials; ++i) {
        const double gauge = random.between(100, 350);
        const double t1 = random.between(-20, 60);
        const double t2 = random.between(-20, 60);
        const double h1 = random.between(-300, 3500);
        const double h2 = random.between(-300, 3500);
        const double moles = (gauge * 1000 + pascalsByIntegration(h1)) / (8.314462618 * (t1 + 273.15));
        const double then = moles * 8.314462618 * (t2 + 273.15) - pascalsByIntegration(h2);
        CHECK(number(ran("tyre-pressure-shift", {{"pressure", exact(gauge)},
                                                 {"temp_from", exact(t1)},
                                                 {"temp_to", exact(t2)},
                                                 {"altitude_from", exact(h1)},
                                                 {"altitude_to", exact(h2)}}),
                     "pressure") == Approx(then / 1000).epsilon(1e-6));

        const double second = gauge * random.between(0.8, 0.95);
        const double hours = random.between(5, 500);
        const Result leak = ran("leak-down", {{"pressure_1", exact(gauge)},
                                              {"temp_1", exact(t1)},
                                              {"pressure_2", exact(second)},
                                              {"temp_2", exact(t2)},
                                              {"hours", exact(hours)},
                                              {"altitude", exact(h1)}});
        const double left = (second * 1000 + pascalsByIntegration(h1)) / (8.314462618 * (t2 + 273.15));
        const double lost = (moles - left) * 8.314462618 * (t1 + 273.15) / 1000;
        CHECK(number(leak, "loss") == Approx(lost).epsilon(1e-5).margin(1e-4));
        CHECK(number(leak, "loss_per_day") * hours == Approx(24 * lost).epsilon(1e-5).margin(1e-2));

        // The same charge of air is squeezed by the same factor wherever the engine cranks.
        const double reading = random.between(300, 1500);
        const double here = pascalsByIntegration(h2) / 1000;
        CHECK(1 + number(ran("compression", {{"reading", exact(reading)}, {"altitude", exact(h2)}}),
                         "sea_level") /
                      101.325 ==
              Approx(1 + reading / here).epsilon(1e-6));

        const int width = 5 * random.whole(14, 28);
        const int aspect = 5 * random.whole(12, 20);
        const int rim = random.whole(10, 17);
        const int load = random.whole(30, 75);
        const Result tyre =
            ran("tyre-marking", {{"marking", std::to_string(width) + "/" + std::to_string(aspect) + "-" +
                                                 std::to_string(rim) + " " + std::to_string(load) + "J"}});
        const double radius = rim * 12.7 + width * (aspect / 100.0);
        CHECK(number(tyre, "diameter") == Approx(2 * radius));
        CHECK(number(tyre, "circumference") == Approx(2 * pi * radius));
        // Load indices are the preferred numbers of ISO 3, 80 to the decade, rounded by up to 1.3 %; the next
        // index is 2.9 % away.
        CHECK(number(tyre, "load") == Approx(std::pow(10, (132 + load) / 80.0)).epsilon(0.014));
    }
}

TEST_CASE("The engine's figures by geometry and balance") {
    Random random;
    for (int i = 0; i < trials; ++i) {
        const double stroke = random.between(30, 90);
        const double rod = random.between(1.2, 2.5) * stroke;
        const double degrees = random.between(1, 179);
        // The small end lies on the cylinder's axis, at the rod's length from the crank pin.
        const double pinX = stroke / 2 * std::sin(degrees * pi / 180);
        const double pinY = stroke / 2 * std::cos(degrees * pi / 180);
        const double smallEnd =
            whereEqual(pinY, pinY + 2 * rod, rod, [&](double y) { return std::hypot(pinX, y - pinY); });
        const double travel = stroke / 2 + rod - smallEnd;
        const Result timed = ran("timing", {{"stroke", exact(stroke)},
                                            {"rod", exact(rod)},
                                            {"degrees", exact(degrees)},
                                            {"flywheel_diameter", "110"}});
        CHECK(number(timed, "travel") == Approx(travel).margin(1e-9));
        CHECK(number(timed, "arc") == Approx(55 * degrees * pi / 180));
        CHECK(number(timed, "chord") ==
              Approx(std::hypot(55 - 55 * std::cos(degrees * pi / 180), 55 * std::sin(degrees * pi / 180))));
        CHECK(
            number(ran("timing", {{"stroke", exact(stroke)}, {"rod", exact(rod)}, {"travel", exact(travel)}}),
                   "degrees") == Approx(degrees).margin(1e-5));

        const double bore = random.between(30, 90);
        const double chamber = random.between(3, 60);
        double swept = 0; // in slices of a thousandth of the stroke, cm3
        for (int slice = 0; slice < 1000; ++slice)
            swept += pi * (bore / 20) * (bore / 20) * stroke / 10 / 1000;
        const Result squeeze =
            ran("compression-ratio",
                {{"bore", exact(bore)}, {"stroke", exact(stroke)}, {"chamber", exact(chamber)}});
        CHECK(number(squeeze, "displacement") == Approx(swept));
        CHECK(number(squeeze, "ratio") * chamber - chamber == Approx(swept));

        const double height = random.between(-300, 4000);
        const double temp = random.between(-20, 45);
        const Result air = ran("air-density", {{"altitude", exact(height)}, {"temp", exact(temp)}});
        const auto standard = [](double h) {
            return pascalsByIntegration(h) * 0.0289644 / (8.31432 * (288.15 - 0.0065 * h));
        };
        const double density = pascalsByIntegration(height) * 0.0289644 / (8.31432 * (temp + 273.15));
        CHECK(number(air, "density") == Approx(density).epsilon(1e-6));
        CHECK(number(air, "density_altitude") ==
              Approx(whereEqual(-6000, 9000, -density, [&](double h) { return -standard(h); })).margin(1));

        // Fuel through the jet goes with its area, and is to go with the root of the air's density: four jets
        // in a row multiply to the ratio itself.
        const double jet = random.between(50, 150);
        const Result leaner = ran("jetting", {{"jet", exact(jet)},
                                              {"altitude_from", "0"},
                                              {"altitude_to", exact(height)},
                                              {"temp_to", exact(temp)}});
        const double change = number(leaner, "jet") / jet;
        CHECK(change * change * change * change == Approx(density / standard(0)).epsilon(1e-6));

        const double fuel = random.between(1, 20);
        const double ratio = random.between(16, 100);
        const Result mixed = ran("premix", {{"fuel", exact(fuel)}, {"ratio", exact(ratio)}});
        CHECK((number(mixed, "mix") - fuel) * ratio == Approx(fuel));
        const Result can =
            ran("premix", {{"fuel", exact(fuel)}, {"ratio", exact(ratio)}, {"measure", "mix"}});
        CHECK(number(can, "oil") / 1000 * (ratio + 1) == Approx(fuel));
    }
}

TEST_CASE("Wear, shims, fluid, beam and gearing by what must stay the same") {
    Random random;
    for (int i = 0; i < trials; ++i) {
        // Thickness falls along a line through (0, new) and (distance, now): where does it meet the limit?
        const double fresh = random.between(4, 9);
        const double now = fresh * random.between(0.5, 0.9);
        const double limit = now * random.between(0.3, 0.9);
        const double distance = random.between(500, 30000);
        const double end =
            whereEqual(0, 1e7, -limit, [&](double x) { return -(fresh - (fresh - now) * x / distance); });
        CHECK(number(ran("wear", {{"now", exact(now)},
                                  {"new", exact(fresh)},
                                  {"limit", exact(limit)},
                                  {"distance", exact(distance)}}),
                     "remaining") == Approx(end - distance).margin(1e-3));

        // Shim and clearance fill the same gap before and after.
        const double shim = random.between(1.5, 3);
        const double clearance = random.between(0.02, 0.4);
        const double wanted = random.between(0.05, 0.3);
        const Result swapped = ran("shim", {{"measured", exact(clearance)},
                                            {"wanted", exact(wanted)},
                                            {"shim", exact(shim)},
                                            {"step", "0.05"}});
        CHECK(number(swapped, "shim") + wanted == Approx(shim + clearance));
        CHECK(number(swapped, "nearest") + number(swapped, "clearance_then") == Approx(shim + clearance));
        CHECK(std::fabs(number(swapped, "nearest") - number(swapped, "shim")) <= 0.025 + 1e-9);

        // A line of one metre holds as many millilitres as its section has square millimetres.
        const double reservoir = random.between(10, 100);
        const double metres = random.between(0.3, 3);
        const double bore = random.between(2, 6);
        const double caliper = random.between(3, 40);
        const Result flush = ran("flush-volume", {{"reservoir", exact(reservoir)},
                                                  {"line_length", exact(metres)},
                                                  {"line_bore", exact(bore)},
                                                  {"caliper", exact(caliper)},
                                                  {"refills", "3"}});
        const double section = pi * (bore / 2) * (bore / 2);
        CHECK(number(flush, "volume") / 3 - reservoir - caliper == Approx(section * metres));

        // The beam's own angle carries it down to the mark.
        const double wall = random.between(3, 25);
        const Result beam =
            ran("headlamp-aim", {{"lamp_height", "800"}, {"distance", exact(wall)}, {"rule", "UK"}});
        for (const char* edge : {"min", "max"})
            CHECK(number(beam, std::string("drop_") + edge) ==
                  Approx(wall * 1000 * std::tan(number(beam, std::string("angle_") + edge) * pi / 180)));
        CHECK(number(beam, "drop_max") == Approx(4 * number(beam, "drop_min"))); // 0.5 and 2 per cent

        // The wheel is rolled for an hour.
        const double rpm = random.between(1000, 9000);
        const double ratio = random.between(4, 30);
        const double round = random.between(900, 2100);
        const Result rolled =
            ran("gearing", {{"rpm", exact(rpm)}, {"ratio", exact(ratio)}, {"circumference", exact(round)}});
        CHECK(number(rolled, "speed") * 1e6 == Approx(rpm * 60 / ratio * round));

        const double real = random.between(20, 120);
        const double shown = real * random.between(0.9, 1.15);
        const Result clock =
            ran("speedometer", {{"shown", exact(shown) + " km/h"}, {"true_speed", exact(real)}});
        CHECK(real * (1 + number(clock, "error") / 100) == Approx(shown));
    }
}
