#include "core/units/format.h"

#include <algorithm>
#include <cmath>
#include <locale>
#include <sstream>

namespace undercowl::units {
namespace {

std::string written(double value, int digits, bool fixed) {
    std::ostringstream stream;
    stream.imbue(std::locale::classic());
    if (fixed)
        stream << std::fixed;
    stream.precision(digits);
    stream << value;
    return stream.str();
}

std::string withoutNegativeZero(std::string text) {
    if (text.starts_with('-') && text.find_first_of("123456789") == std::string::npos)
        text.erase(0, 1);
    return text;
}

int decimalsForStep(double step) {
    // A step of 0.1 must give one decimal although log10(0.1) may be a hair off.
    return std::clamp(static_cast<int>(-std::floor(std::log10(step) + 1e-9)), 0, 12);
}

} // namespace

std::string formatFixed(double value, int decimals) {
    return withoutNegativeZero(written(value, std::clamp(decimals, 0, 12), true));
}

std::string formatSignificant(double value, int significant) {
    if (value == 0 || !std::isfinite(value))
        return value == 0 ? "0" : written(value, 6, false);
    const int magnitude = static_cast<int>(std::floor(std::log10(std::fabs(value))));
    std::string text = formatFixed(value, std::max(0, significant - 1 - magnitude));
    if (text.find('.') != std::string::npos) {
        text.erase(text.find_last_not_of('0') + 1);
        if (text.ends_with('.'))
            text.pop_back();
    }
    return withoutNegativeZero(text);
}

std::string formatExact(double value) {
    for (int digits = 6; digits < 17; ++digits) {
        std::string text = written(value, digits, false);
        std::istringstream back(text);
        back.imbue(std::locale::classic());
        double same = 0;
        if (back >> same && same == value)
            return text;
    }
    return written(value, 17, false);
}

std::string withSymbol(const std::string& number, Unit unit) {
    if (unit == Unit())
        return number;
    if (unit.symbol() == "percent")
        return number + " %";
    return number + " " + unit.symbol();
}

std::string formatToStep(const Quantity& quantity, double step) {
    if (!(step > 0))
        return format(quantity);
    return withSymbol(formatFixed(quantity.value, decimalsForStep(step)), quantity.unit);
}

std::string format(const Quantity& quantity, int significant) {
    return withSymbol(formatSignificant(quantity.value, significant), quantity.unit);
}

double convertedStep(const Quantity& quantity, double step, Unit other) {
    const Quantity next{quantity.value + step, quantity.unit};
    return std::fabs(next.in(other)-quantity.in(other));
}

} // namespace undercowl::units
