// What kind of thing a quantity measures.
//
// Torque and energy have the same SI base units, and so have gauge and absolute pressure; they are kept apart
// because adding or comparing them is a mistake. A pressure difference is a loss or a drop: neither gauge nor
// absolute.
#pragma once

#include <cstdint>
#include <string_view>

namespace undercowl::units {

enum class Dimension : std::uint8_t {
    Number, // dimensionless: a share, a ratio, a percentage
    Torque,
    Energy,
    Force,
    GaugePressure,
    AbsolutePressure,
    PressureDifference,
    Stress,
    Length,
    Area,
    Volume,
    Mass,
    Density,
    Speed,
    RotationalSpeed,
    Power,
    Consumption,
    Temperature,
    TemperatureDifference,
    Time,
    Angle,
    Voltage,
    Current,
    Resistance,
    Charge,
};

inline constexpr int dimensionCount = static_cast<int>(Dimension::Charge) + 1;

// "gauge pressure". Never fails.
[[nodiscard]] std::string_view englishName(Dimension dimension);

// What a difference of two of them is: of two gauge pressures a pressure difference, of two temperatures
// kelvins; else the same. Uncertainties and steps are of this dimension; its base unit has the same size.
[[nodiscard]] Dimension intervalOf(Dimension dimension);

} // namespace undercowl::units
