#include "core/units/typed.h"

#include <catch2/catch.hpp>

#include <type_traits>

using namespace undercowl::units;

namespace {

template<class A, class B>
concept Addable = requires(A a, B b) {
    a + b;
};
template<class A, class B>
concept Comparable = requires(A a, B b) {
    a < b;
};

// The mistakes that must not compile.
static_assert(!std::is_convertible_v<Torque, Energy> && !std::is_constructible_v<Energy, Torque>);
static_assert(!std::is_convertible_v<GaugePressure, AbsolutePressure>);
static_assert(!Addable<GaugePressure, AbsolutePressure> && !Comparable<GaugePressure, AbsolutePressure>);
static_assert(!Addable<Torque, Energy> && Addable<Torque, Torque>);
static_assert(!std::is_constructible_v<Torque, double>);

} // namespace

TEST_CASE("Gauge and absolute pressure meet only through the ambient pressure") {
    const GaugePressure tyre{200, unit(Dimension::GaugePressure, "kPa gauge")};
    const AbsolutePressure ambient{1, unit(Dimension::AbsolutePressure, "atm absolute")};
    const Unit absoluteBar = unit(Dimension::AbsolutePressure, "bar absolute");
    CHECK(absolute(tyre, ambient).in(absoluteBar) == Approx(3.01325).epsilon(1e-15));
    CHECK(gauge(absolute(tyre, ambient), ambient) == tyre);
}

TEST_CASE("A quantity of another dimension is refused, naming what would fit") {
    const auto wrong = Energy::from({5, unit(Dimension::Torque, "N.m")});
    REQUIRE_FALSE(wrong);
    CHECK(wrong.error().kind == UnitError::Kind::WrongUnit);
    CHECK(wrong.error().message.find("what fits is N.m") != std::string::npos);
    const auto right = Torque::from({1, unit(Dimension::Torque, "kgf.m")});
    REQUIRE(right);
    CHECK(right->in(unit(Dimension::Torque, "N.m")) == Approx(9.80665).epsilon(1e-15));
    CHECK(*right / Torque{1, unit(Dimension::Torque, "N.m")} == Approx(9.80665));
}
