// Quantities whose dimension the compiler knows, for signatures: a torque cannot be passed where an energy is
// wanted, nor a gauge pressure where an absolute one is.
#pragma once

#include "core/units/quantity.h"

#include <compare>

namespace undercowl::units {

template<Dimension D>
class Of {
public:
    // VALUE in UNIT, which must be of this dimension (ends the program otherwise: see Quantity::in).
    Of(double value, Unit unit) : base_(Quantity{value, unit}.in(baseUnit(D))) {}

    // From a quantity of any dimension: the error names what would fit.
    [[nodiscard]] static tl::expected<Of, UnitError> from(const Quantity& quantity) {
        return convert(quantity, baseUnit(D)).map([](const Quantity& q) { return Of(q.value, q.unit); });
    }

    [[nodiscard]] double in(Unit unit) const { return quantity().in(unit); }
    [[nodiscard]] Quantity quantity() const { return {base_, baseUnit(D)}; }

    friend Of operator+(Of a, Of b) { return Of(a.base_ + b.base_, baseUnit(D)); }
    friend Of operator-(Of a, Of b) { return Of(a.base_ - b.base_, baseUnit(D)); }
    friend Of operator*(Of a, double factor) { return Of(a.base_ * factor, baseUnit(D)); }
    friend double operator/(Of a, Of b) { return a.base_ / b.base_; }
    friend auto operator<=>(Of a, Of b) = default;

private:
    double base_;
};

using Torque = Of<Dimension::Torque>;
using Energy = Of<Dimension::Energy>;
using Force = Of<Dimension::Force>;
using GaugePressure = Of<Dimension::GaugePressure>;
using AbsolutePressure = Of<Dimension::AbsolutePressure>;
using PressureDifference = Of<Dimension::PressureDifference>;
using Length = Of<Dimension::Length>;
using Temperature = Of<Dimension::Temperature>;
using Voltage = Of<Dimension::Voltage>;

[[nodiscard]] inline AbsolutePressure absolute(GaugePressure gauge, AbsolutePressure ambient) {
    const Quantity sum = toAbsolute(gauge.quantity(), ambient.quantity());
    return {sum.value, sum.unit};
}

[[nodiscard]] inline GaugePressure gauge(AbsolutePressure absolute, AbsolutePressure ambient) {
    const Quantity difference = toGauge(absolute.quantity(), ambient.quantity());
    return {difference.value, difference.unit};
}

} // namespace undercowl::units
