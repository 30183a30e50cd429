// Sums of money in exact decimals: prices, hours, tax.
#pragma once

#include "core/job/model.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::job {

// A decimal number with four places, exact. Four places are more than any currency has, so that nothing is
// rounded before a line of the bill is.
struct Decimal {
    std::int64_t tenThousandths{};

    friend bool operator==(const Decimal&, const Decimal&) = default;
    friend auto operator<=>(const Decimal&, const Decimal&) = default;
    friend Decimal operator+(Decimal a, Decimal b) { return {a.tenThousandths + b.tenThousandths}; }
    friend Decimal operator-(Decimal a, Decimal b) { return {a.tenThousandths - b.tenThousandths}; }
};

// "120.50", "120,5", "-3"; at most four places and eleven digits before them. Nothing for anything else: no
// exponent, no grouping.
[[nodiscard]] std::optional<Decimal> decimal(std::string_view digits);

// The same digits with a point where a comma was typed; nothing when they are no decimal.
[[nodiscard]] std::optional<std::string> withPoint(std::string digits);

// How many places the currency has (ISO 4217): 0 for JPY, 3 for KWD, 2 for most and for an unknown one.
[[nodiscard]] int currencyPlaces(std::string_view currency);

// Half away from zero, as bills are rounded; places from 0 to 4.
[[nodiscard]] Decimal rounded(Decimal value, int places);
[[nodiscard]] std::string written(Decimal value, int places); // "120.50", with a point

// a * b / divisor, rounded once to 'places'. Nothing where the result does not fit.
[[nodiscard]] std::optional<Decimal> scaled(Decimal a, Decimal b, std::int64_t divisor, int places);

// One sum for each currency, in order of the currency's letters. Values that are no decimal are left out and
// counted in 'unreadable' if it is given.
[[nodiscard]] std::vector<TypedValue> sums(const std::vector<TypedValue>& values, int* unreadable = nullptr);

} // namespace undercowl::job
