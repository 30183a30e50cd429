// Random inputs and physics from first principles, to recompute results by another route than the code's own.
#pragma once

#include "tests/trade/running.h"

#include <cmath>
#include <random>

namespace undercowl::trade {

class Random {
public:
    double between(double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(engine_);
    }
    int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(engine_); }

private:
    std::mt19937 engine_{12345};
};

// How often each calculation is tried.
inline constexpr int trials = 200;

// The standard atmosphere by the balance of weight and pressure, dp = -rho g dh, step by step upwards, with
// the molar gas constant and the molar mass of air: U.S. Standard Atmosphere 1976, equations 23 and 33.
inline double pascalsByIntegration(double metres) {
    const auto slope = [](double p, double h) {
        return -9.80665 * 0.0289644 * p / (8.31432 * (288.15 - 0.0065 * h));
    };
    constexpr int steps = 64;
    const double step = metres / steps;
    double p = 101325;
    for (int i = 0; i < steps; ++i) { // Runge and Kutta, fourth order
        const double h = i * step;
        const double a = slope(p, h);
        const double b = slope(p + step / 2 * a, h + step / 2);
        const double c = slope(p + step / 2 * b, h + step / 2);
        const double d = slope(p + step * c, h + step);
        p += step / 6 * (a + 2 * b + 2 * c + d);
    }
    return p;
}

// Where a rising function meets WANTED, by halving.
template<typename Function>
double whereEqual(double low, double high, double wanted, Function function) {
    for (int i = 0; i < 100; ++i) {
        const double middle = (low + high) / 2;
        (function(middle) < wanted ? low : high) = middle;
    }
    return low;
}

} // namespace undercowl::trade
