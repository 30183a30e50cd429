// The air that engines breathe and tyres stand in.
#pragma once

#include <optional>

namespace undercowl::trade {

// U.S. Standard Atmosphere 1976 (same as ISO 2533) up to 11 km: 288.15 K and 101325 Pa at sea level, 6.5 K
// per km.
inline constexpr double seaLevelPascals = 101325;
inline constexpr double seaLevelDensity = 1.225; // kg/m3
[[nodiscard]] double standardKelvin(double altitudeMetres);
[[nodiscard]] double standardPascals(double altitudeMetres);
[[nodiscard]] double standardDensity(double altitudeMetres);
// The altitude at which standard air is as thin as that.
[[nodiscard]] double densityAltitude(double density);

// Ideal dry air, kg/m3.
[[nodiscard]] double dryDensity(double pascals, double celsius);

// Humid air by CIPM-2007 (Picard, Davis, Glaeser & Fujii 2008) at a carbon dioxide share of 0.0004; meant for
// 15 to 27 degC and 600 to 1100 hPa. Humidity 0 to 1.
struct HumidAir {
    double saturationPascals{}; // of water vapour
    double enhancement{};
    double vapourShare{}; // mole fraction
    double compressibility{};
    double density{}; // kg/m3
};
[[nodiscard]] HumidAir humidAir(double pascals, double celsius, double humidity);

// Saturation vapour pressure over water, Pa: Magnus form of WMO-No. 8, and Buck 1981 as revised 1996.
[[nodiscard]] double magnusPascals(double celsius);
[[nodiscard]] double buckPascals(double celsius);
// Ideal mixture of dry air and vapour; good to about 0.1 % near sea level.
[[nodiscard]] double idealHumidDensity(double pascals, double celsius, double humidity);

// SAE J1349 (June 1990 form): observed power times this is power at 99 kPa dry and 25 degC; four-stroke
// petrol engines.
[[nodiscard]] double powerCorrection(double dryKilopascals, double celsius);

} // namespace undercowl::trade
