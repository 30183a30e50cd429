// Exact ratios of integers, for conversion factors that follow from definitions.
#pragma once

#include <cstdint>
#include <numeric>

namespace undercowl::units {

// Always in lowest terms with a positive denominator. Every factor of the unit table is a constant
// expression, so that an overflow is a compiler error and never a wrong number.
class Rational {
public:
    constexpr Rational() = default;
    // The denominator must not be zero.
    constexpr Rational(std::int64_t numerator, std::int64_t denominator = 1)
        : numerator_(numerator / std::gcd(numerator, denominator)),
          denominator_(denominator / std::gcd(numerator, denominator)) {
        if (denominator_ < 0) {
            numerator_ = -numerator_;
            denominator_ = -denominator_;
        }
    }

    [[nodiscard]] constexpr std::int64_t numerator() const { return numerator_; }
    [[nodiscard]] constexpr std::int64_t denominator() const { return denominator_; }
    [[nodiscard]] constexpr Rational inverse() const { return {denominator_, numerator_}; }

    friend constexpr Rational operator*(Rational a, Rational b) {
        // Reduced crosswise first, so that the products stay small.
        const Rational left{a.numerator_, b.denominator_};
        const Rational right{b.numerator_, a.denominator_};
        return {left.numerator_ * right.numerator_, left.denominator_ * right.denominator_};
    }
    friend constexpr Rational operator/(Rational a, Rational b) { return a * b.inverse(); }
    friend constexpr bool operator==(Rational a, Rational b) = default;

private:
    std::int64_t numerator_ = 0;
    std::int64_t denominator_ = 1;
};

} // namespace undercowl::units
