#include "core/trade/air.h"

#include <cmath>

namespace undercowl::trade {
namespace {

constexpr double lapse = 0.0065;                  // K/m
constexpr double gasConstant = 8314.32 / 28.9644; // J/(kg K), as the 1976 standard has it
constexpr double gravity = 9.80665;
constexpr double exponent = gravity / (gasConstant * lapse);
constexpr double zero = 273.15;

} // namespace

double standardKelvin(double altitudeMetres) {
    return 288.15 - lapse * altitudeMetres;
}

double standardPascals(double altitudeMetres) {
    return seaLevelPascals * std::pow(standardKelvin(altitudeMetres) / 288.15, exponent);
}

double standardDensity(double altitudeMetres) {
    return standardPascals(altitudeMetres) / (gasConstant * standardKelvin(altitudeMetres));
}

double densityAltitude(double density) {
    return 288.15 / lapse * (1 - std::pow(density / standardDensity(0), 1 / (exponent - 1)));
}

double dryDensity(double pascals, double celsius) {
    return pascals / (gasConstant * (celsius + zero));
}

HumidAir humidAir(double p, double t, double humidity) {
    const double kelvin = t + zero;
    HumidAir air;
    air.saturationPascals =
        std::exp(1.2378847e-5 * kelvin * kelvin - 1.9121316e-2 * kelvin + 33.93711047 - 6.3431645e3 / kelvin);
    air.enhancement = 1.00062 + 3.14e-8 * p + 5.6e-7 * t * t;
    air.vapourShare = humidity * air.enhancement * air.saturationPascals / p;
    const double x = air.vapourShare;
    air.compressibility = 1 -
                          p / kelvin *
                              (1.58123e-6 - 2.9331e-8 * t + 1.1043e-10 * t * t +
                               (5.707e-6 - 2.051e-8 * t) * x + (1.9898e-4 - 2.376e-6 * t) * x * x) +
                          p * p / (kelvin * kelvin) * (1.83e-11 - 0.765e-8 * x * x);
    air.density = 3.483740e-3 * p / (air.compressibility * kelvin) * (1 - 0.3780 * x);
    return air;
}

double magnusPascals(double celsius) {
    return 611.2 * std::exp(17.62 * celsius / (243.12 + celsius));
}

double buckPascals(double celsius) {
    return 611.21 * std::exp((18.678 - celsius / 234.5) * celsius / (257.14 + celsius));
}

double idealHumidDensity(double pascals, double celsius, double humidity) {
    const double vapour = humidity * magnusPascals(celsius);
    const double kelvin = celsius + zero;
    return (pascals - vapour) / (287.05 * kelvin) + vapour / (461.5 * kelvin);
}

double powerCorrection(double dryKilopascals, double celsius) {
    return 1.180 * (99 / dryKilopascals) * std::sqrt((celsius + 273) / 298) - 0.180;
}

} // namespace undercowl::trade
