#include "core/units/parse.h"

#include "core/units/format.h"
#include "core/units/spelling.h"

#include <cmath>
#include <locale>
#include <sstream>

namespace undercowl::units {
namespace {

using Kind = UnitError::Kind;

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

bool allDigits(std::string_view text) {
    return !text.empty() && text.find_first_not_of("0123456789") == std::string_view::npos;
}

tl::unexpected<UnitError> refuse(Kind kind, std::string message) {
    return tl::unexpected(UnitError{kind, std::move(message)});
}

std::string quoted(std::string_view text) {
    return "\"" + std::string(text) + "\"";
}

double classicDouble(const std::string& text) {
    // Streams with the classic locale read the same everywhere; strtod follows the process's locale.
    std::istringstream stream(text);
    stream.imbue(std::locale::classic());
    double value = 0;
    stream >> value;
    return stream.fail() ? std::nan("") : value;
}

tl::unexpected<UnitError> notANumber(std::string_view text) {
    return refuse(Kind::NotANumber,
                  quoted(text) +
                      " is not a number: write digits with one decimal point or comma, such as 2.4 or 1/2");
}

// "1/2", "1 1/2", "1-1/2"; the sign has been taken off.
tl::expected<Typed, UnitError> parseFraction(std::string_view text, std::string_view whole) {
    const auto slash = text.find('/');
    std::string_view front = text.substr(0, slash);
    const std::string_view denominatorText = text.substr(slash + 1);
    double whole1 = 0;
    if (const auto gap = front.find_last_of(" -"); gap != std::string_view::npos) {
        const auto end = front.substr(0, gap).find_last_not_of(" -");
        const std::string_view wholeText = front.substr(0, end + 1);
        if (end == std::string_view::npos || !allDigits(wholeText))
            return notANumber(whole);
        whole1 = classicDouble(std::string(wholeText));
        front = front.substr(gap + 1);
    }
    if (!allDigits(front) || !allDigits(denominatorText))
        return notANumber(whole);
    const double denominator = classicDouble(std::string(denominatorText));
    if (denominator == 0)
        return refuse(Kind::NotANumber, quoted(whole) + " divides by zero");
    const double numerator = classicDouble(std::string(front));
    // "35/35" on a bulb is two filaments and "120/80" on a gauge two readings, not 1 and 1.5.
    if (numerator >= denominator)
        return refuse(Kind::AmbiguousNumber, quoted(whole) + " could be a fraction or two values: write one "
                                                             "number, a fraction above one as 1 1/4");
    return Typed{std::string(whole), whole1 + numerator / denominator, 1 / denominator};
}

tl::expected<Typed, UnitError> parseDecimal(std::string_view text, std::string_view whole, Comma comma) {
    std::string_view mantissa = text;
    std::string exponent;
    if (const auto e = text.find_first_of("eE"); e != std::string_view::npos) {
        mantissa = text.substr(0, e);
        exponent = "e" + std::string(text.substr(e + 1));
    }
    const auto separator = mantissa.find_first_of(".,");
    if (separator == std::string_view::npos) {
        if (!allDigits(mantissa))
            return notANumber(whole);
        const std::string number = std::string(mantissa) + exponent;
        return Typed{std::string(whole), classicDouble(number), classicDouble("1" + exponent)};
    }
    const std::string before{mantissa.substr(0, separator)};
    const std::string after{mantissa.substr(separator + 1)};
    if (after.find_first_of(".,") != std::string::npos)
        return refuse(Kind::AmbiguousNumber,
                      quoted(whole) +
                          " has more than one separator: write the number without grouping, such as 1234.5");
    if ((!before.empty() && !allDigits(before)) || (!after.empty() && !allDigits(after)) ||
        (before.empty() && after.empty()))
        return notANumber(whole);
    if (mantissa[separator] == ',' && comma == Comma::MayGroup && after.size() == 3 && before.size() <= 3 &&
        !before.empty() && before.front() != '0')
        return refuse(Kind::AmbiguousNumber, quoted(whole) + " could be " + before + after + " or " + before +
                                                 "." + after + ": write " + before + after + ", or " +
                                                 before + "." + after + " with a point");
    const double value = classicDouble("0" + before + "." + after + "0" + exponent);
    const double step = std::pow(10.0, -static_cast<double>(after.size())) *
                        (exponent.empty() ? 1.0 : classicDouble("1" + exponent));
    return Typed{std::string(whole), value, step};
}

// How much of TEXT, from its start, is a number; the rest is the unit.
std::size_t numberLength(std::string_view text) {
    std::size_t at = 0;
    std::size_t end = 0;
    if (at < text.size() && (text[at] == '-' || text[at] == '+'))
        ++at;
    while (at < text.size()) {
        const char c = text[at];
        if (isDigit(c)) {
            end = ++at;
        } else if (c == '.' || c == ',' || c == '/' || c == '\'' || c == ' ' || c == '-') {
            // Part of the number only if a digit follows: "34 psi", "1 1/2", "ft-lb" after "25 ".
            ++at;
            if ((c == '.' || c == ',') && end + 1 == at)
                end = at;
        } else if ((c == 'e' || c == 'E') && end == at && at + 1 < text.size() &&
                   (isDigit(text[at + 1]) || ((text[at + 1] == '-' || text[at + 1] == '+') &&
                                              at + 2 < text.size() && isDigit(text[at + 2])))) {
            at += 2;
            while (at < text.size() && isDigit(text[at]))
                ++at;
            return at;
        } else {
            break;
        }
    }
    return end;
}

tl::unexpected<UnitError> unknownUnit(std::string_view written, Dimension dimension) {
    if (const auto trap = knownAmbiguity(written))
        return refuse(Kind::AmbiguousUnit, quoted(written) + " is ambiguous: " + *trap);
    const std::string wanted =
        std::string(englishName(dimension)) + " is wanted here, in " + symbolsOf(dimension);
    const auto others = findUnits(written);
    if (others.empty())
        return refuse(Kind::UnknownUnit, quoted(written) + " is not a unit that is known here: " + wanted);
    return refuse(Kind::WrongUnit, quoted(written) + " is a unit of " +
                                       std::string(englishName(others.front().dimension())) + ": " + wanted);
}

} // namespace

tl::expected<Typed, UnitError> parseNumber(std::string_view text, Comma comma) {
    const std::string plain = plainBlanks(text);
    std::string_view rest = plain;
    double sign = 1;
    if (!rest.empty() && (rest.front() == '-' || rest.front() == '+')) {
        sign = rest.front() == '-' ? -1 : 1;
        rest.remove_prefix(1);
    }
    while (!rest.empty() && rest.front() == ' ')
        rest.remove_prefix(1);
    if (rest.empty() || (!isDigit(rest.front()) && rest.front() != '.' && rest.front() != ','))
        return notANumber(plain);
    const bool fraction = rest.find('/') != std::string_view::npos;
    if (!fraction && rest.find_first_of(" '") != std::string_view::npos)
        return refuse(Kind::AmbiguousNumber,
                      quoted(plain) + " has a gap inside: write the number without grouping, such as 1234.5");
    auto typed = fraction ? parseFraction(rest, plain) : parseDecimal(rest, plain, comma);
    if (!typed)
        return typed;
    typed->value *= sign;
    if (!std::isfinite(typed->value) || !std::isfinite(typed->step))
        return refuse(Kind::OutOfRange, quoted(plain) + " is beyond any number that is measured");
    return typed;
}

tl::expected<Split, UnitError> splitQuantity(std::string_view text, Comma comma) {
    const std::string plain = plainBlanks(text);
    // A wire gauge is as often written before its number as after it.
    if (foldedSpelling(plain).starts_with("awg"))
        return parseNumber(plain.substr(3), comma).map([](Typed number) {
            return Split{std::move(number), "AWG"};
        });
    const std::size_t length = numberLength(plain);
    if (length == 0)
        return notANumber(plain);
    return parseNumber(std::string_view(plain).substr(0, length), comma).map([&](Typed number) {
        return Split{std::move(number), plainBlanks(std::string_view(plain).substr(length))};
    });
}

tl::expected<AsTyped, UnitError> parseQuantity(std::string_view text, Dimension dimension,
                                               std::optional<Unit> fallback, Comma comma) {
    auto split = splitQuantity(text, comma);
    if (!split)
        return tl::unexpected(split.error());
    if (split->unitText.empty() && fallback)
        return AsTyped{std::move(split->number), *fallback};
    if (split->unitText.empty() && dimension != Dimension::Number)
        return refuse(Kind::MissingUnit, quoted(plainBlanks(text)) +
                                             " has no unit: " + std::string(englishName(dimension)) +
                                             " is wanted here, in " + symbolsOf(dimension));
    const auto unit = findUnit(split->unitText, dimension);
    if (!unit)
        return unknownUnit(split->unitText, dimension);
    return AsTyped{std::move(split->number), *unit};
}

std::string AsTyped::text() const {
    if (unit == Unit())
        return number.text;
    return number.text + " " + unit.symbol();
}

tl::expected<std::string, UnitError> AsTyped::textIn(Unit other) const {
    return convert(quantity(), other).map([&](const Quantity& converted) {
        return formatToStep(converted, convertedStep(quantity(), number.step, other));
    });
}

} // namespace undercowl::units
