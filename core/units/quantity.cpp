#include "core/units/quantity.h"

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <numbers>

namespace undercowl::units {
namespace {

long double ratio(Rational r) {
    return static_cast<long double>(r.numerator()) / static_cast<long double>(r.denominator());
}

long double scaled(long double value, Rational r) {
    return value * static_cast<long double>(r.numerator()) / static_cast<long double>(r.denominator());
}

constexpr long double pi = std::numbers::pi_v<long double>;
// ASTM B258: number 36 is 0.127 mm, each of 39 steps is the 39th root of 92.
constexpr long double gaugeRoot = 0.127L;

long double toBase(long double value, const UnitEntry& entry) {
    switch (entry.law) {
    case Law::Reciprocal: return ratio(entry.factor) / value;
    case Law::Gauge: {
        const long double diameter = gaugeRoot * std::pow(92.0L, (36 - value) / 39);
        return pi / 4 * diameter * diameter;
    }
    case Law::Linear: break;
    }
    const long double base = scaled(value - ratio(entry.zero), entry.factor);
    return entry.irrational ? base / pi : base;
}

long double fromBase(long double base, const UnitEntry& entry) {
    switch (entry.law) {
    case Law::Reciprocal: return ratio(entry.factor) / base;
    case Law::Gauge: return 36 - 39 * std::log(std::sqrt(base * 4 / pi) / gaugeRoot) / std::log(92.0L);
    case Law::Linear: break;
    }
    return scaled(entry.irrational ? base * pi : base, entry.factor.inverse()) + ratio(entry.zero);
}

[[noreturn]] void wrongDimension(Unit from, Unit to) {
    std::fprintf(stderr, "cannot convert %s to %s\n", from.symbol().c_str(), to.symbol().c_str());
    std::abort();
}

void mustBe(const Quantity& quantity, Dimension dimension) {
    if (quantity.unit.dimension() != dimension)
        wrongDimension(quantity.unit, baseUnit(dimension));
}

} // namespace

double Quantity::in(Unit other) const {
    if (other.dimension() != unit.dimension())
        wrongDimension(unit, other);
    if (other == unit)
        return value;
    return static_cast<double>(fromBase(toBase(value, unit.entry()), other.entry()));
}

tl::expected<Quantity, UnitError> convert(const Quantity& quantity, Unit to) {
    if (to.dimension() == quantity.unit.dimension())
        return Quantity{quantity.in(to), to};
    const Dimension from = quantity.unit.dimension();
    std::string message = quantity.unit.symbol() + " is a unit of " + std::string(englishName(from)) + ", " +
                          to.symbol() + " of " + std::string(englishName(to.dimension())) +
                          ": what fits is " + symbolsOf(from);
    return tl::unexpected(UnitError{UnitError::Kind::WrongUnit, std::move(message)});
}

Quantity toAbsolute(const Quantity& gauge, const Quantity& ambientAbsolute) {
    mustBe(gauge, Dimension::GaugePressure);
    mustBe(ambientAbsolute, Dimension::AbsolutePressure);
    return {gauge.base() + ambientAbsolute.base(), baseUnit(Dimension::AbsolutePressure)};
}

Quantity toGauge(const Quantity& absolute, const Quantity& ambientAbsolute) {
    mustBe(absolute, Dimension::AbsolutePressure);
    mustBe(ambientAbsolute, Dimension::AbsolutePressure);
    return {absolute.base() - ambientAbsolute.base(), baseUnit(Dimension::GaugePressure)};
}

} // namespace undercowl::units
