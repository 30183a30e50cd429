#include "core/job/money.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <map>

namespace undercowl::job {
namespace {

// Twice as wide as a sum, so that nothing is lost on the way. An alias declaration cannot be an extension.
__extension__ typedef __int128 Wide; // NOLINT(modernize-use-using)

constexpr int storedPlaces = 4;
constexpr std::size_t mostWhole = 11; // digits before the point
constexpr std::array<std::int64_t, 5> powers{1, 10, 100, 1000, 10000};

// ISO 4217, the list of 2024; from memory, the common ones.
constexpr std::array<std::string_view, 14> withoutPlaces{"BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF",
                                                         "KRW", "PYG", "RWF", "UGX", "VND", "XAF", "XOF"};
constexpr std::array<std::string_view, 7> withThree{"BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"};

std::int64_t roundedBy(Wide value, Wide unit) {
    const Wide half = unit / 2;
    const Wide away = value >= 0 ? value + half : value - half;
    return static_cast<std::int64_t>(away / unit);
}

} // namespace

std::optional<Decimal> decimal(std::string_view digits) {
    const bool negative = digits.starts_with('-');
    if (negative)
        digits.remove_prefix(1);
    const std::size_t point = std::min(digits.find_first_of(".,"), digits.size());
    const std::string_view whole = digits.substr(0, point);
    const std::string_view part = point < digits.size() ? digits.substr(point + 1) : std::string_view{};
    const auto allDigits = [](std::string_view text) {
        return std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
    };
    if (whole.empty() || whole.size() > mostWhole || part.size() > storedPlaces || !allDigits(whole) ||
        !allDigits(part) || (point < digits.size() && part.empty()))
        return std::nullopt;
    std::int64_t value = 0;
    for (const char c : whole)
        value = value * 10 + (c - '0');
    for (std::size_t i = 0; i < storedPlaces; ++i)
        value = value * 10 + (i < part.size() ? part[i] - '0' : 0);
    return Decimal{negative ? -value : value};
}

std::optional<std::string> withPoint(std::string digits) {
    if (!decimal(digits))
        return std::nullopt;
    std::replace(digits.begin(), digits.end(), ',', '.');
    return digits;
}

int currencyPlaces(std::string_view currency) {
    std::string code;
    for (const char c : currency)
        code += static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
    if (std::find(withoutPlaces.begin(), withoutPlaces.end(), code) != withoutPlaces.end())
        return 0;
    return std::find(withThree.begin(), withThree.end(), code) != withThree.end() ? 3 : 2;
}

Decimal rounded(Decimal value, int places) {
    const std::int64_t unit = powers.at(static_cast<std::size_t>(storedPlaces - places));
    return {roundedBy(value.tenThousandths, unit) * unit};
}

std::string written(Decimal value, int places) {
    const std::int64_t exact = rounded(value, places).tenThousandths;
    const std::int64_t magnitude = exact < 0 ? -exact : exact;
    std::string text = (exact < 0 ? "-" : "") + std::to_string(magnitude / powers.back());
    if (places == 0)
        return text;
    std::string part = std::to_string(magnitude % powers.back() + powers.back()).substr(1);
    part.resize(static_cast<std::size_t>(places));
    return text + "." + part;
}

std::optional<Decimal> scaled(Decimal a, Decimal b, std::int64_t divisor, int places) {
    if (divisor <= 0)
        return std::nullopt;
    const Wide product = static_cast<Wide>(a.tenThousandths) * b.tenThousandths;
    const Wide unit = static_cast<Wide>(divisor) * powers.back() *
                      powers.at(static_cast<std::size_t>(storedPlaces - places));
    constexpr Wide most = static_cast<Wide>(1'000'000'000'000'000);
    if (product / unit > most || product / unit < -most)
        return std::nullopt;
    return Decimal{roundedBy(product, unit) * powers.at(static_cast<std::size_t>(storedPlaces - places))};
}

std::vector<TypedValue> sums(const std::vector<TypedValue>& values, int* unreadable) {
    std::map<std::string, Decimal> totals;
    for (const TypedValue& value : values) {
        const auto exact = decimal(value.digits);
        if (exact)
            totals[value.unit] = totals[value.unit] + *exact;
        else if (unreadable != nullptr)
            ++*unreadable;
    }
    std::vector<TypedValue> all;
    all.reserve(totals.size());
    for (const auto& [currency, total] : totals)
        all.push_back({written(total, currencyPlaces(currency)), currency});
    return all;
}

} // namespace undercowl::job
