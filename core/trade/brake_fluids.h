// Grades of brake fluid by FMVSS 116 (49 CFR 571.116).
#pragma once

#include <span>
#include <string_view>

namespace undercowl::trade {

enum class FluidFamily { Glycol, Silicone, Mineral };

struct BrakeFluidGrade {
    std::string_view key;
    FluidFamily family;
    double dry; // least equilibrium reflux boiling point, degC; 0 where the standard has none
    double wet;
    double dryFahrenheit;
    double wetFahrenheit;
    std::string_view colour;
};

[[nodiscard]] std::span<const BrakeFluidGrade> brakeFluidGrades();
[[nodiscard]] const BrakeFluidGrade* brakeFluidGrade(std::string_view key);

} // namespace undercowl::trade
