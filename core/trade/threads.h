// Metric bolts: threads, stress areas, property classes, and what turns torque into preload.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <tl/expected.hpp>

namespace undercowl::trade {

struct Thread {
    double diameter{}; // mm
    double pitch{};    // mm
    bool coarse{};     // the standard coarse pitch of that diameter
};

// "M8", "m8x1.25", "M10 x 1,25". Without a pitch the coarse one is meant. The error lists what would be
// possible.
[[nodiscard]] tl::expected<Thread, std::string> parseThread(std::string_view text);

// As = pi/4 (d - 0.938194 P)^2 in mm2, ISO 898-1:2013 clause 9.1.6.
[[nodiscard]] double stressArea(const Thread& thread);
// Rounded to three digits, as the tables of ISO 898-1 have it and as loads are worked out from.
[[nodiscard]] double nominalStressArea(const Thread& thread);
// ISO 724, 60 degree profile.
[[nodiscard]] double pitchDiameter(const Thread& thread);

struct PropertyClass {
    std::string_view name; // "8.8"
    double proofStress{};  // MPa, ISO 898-1:2013 table 3
    double tensile{};      // MPa, least
};
[[nodiscard]] std::optional<PropertyClass> propertyClass(std::string_view name);
inline constexpr std::string_view propertyClassNames = "4.6, 5.8, 8.8, 10.9, 12.9";

// Newtons. The printed load of ISO 898-1:2013 table 5 for coarse threads M4 to M12, else stress times nominal
// area.
[[nodiscard]] double proofLoad(const Thread& thread, const PropertyClass& grade);

// Torque (N.m) over preload (N) and metre: T = F K d. From friction by the long form of VDI 2230-1:
// K = [P/(2 pi) + mu_thread d2/(2 cos 30) + mu_head D/2]/d with the mean bearing diameter D (mm).
[[nodiscard]] double nutFactor(const Thread& thread, double threadFriction, double headFriction,
                               double meanBearing);
// Of a hexagon head over a medium clearance hole (ISO 4014, ISO 273; from memory but for M6, M8 and M10).
// Nothing for sizes that are not listed.
[[nodiscard]] std::optional<double> hexagonBearing(double diameter);

} // namespace undercowl::trade
