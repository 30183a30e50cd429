#include "core/trade/calculations.h"
#include "core/trade/vins.h"

#include "core/units/spelling.h"

#include <fmt/format.h>

#include <array>

namespace undercowl::trade {
namespace {

// A year that has not come is none; next year's models are sold this year.
std::vector<int> yearsOf(char code, int thisYear) {
    std::vector<int> years;
    if (const auto first = vinYear(code))
        for (const int year : {*first, *first + 30})
            if (year <= thisYear + 1)
                years.push_back(year);
    return years;
}

Outcome work(const Declaration& declaration, const Given& given) {
    std::string number;
    for (char c : given.text("number"))
        if (c != ' ')
            number += c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    if (number.size() < 3 || number.size() > 30)
        return given.problem("number", "is no frame number", "17 characters, or an older number as stamped");
    Result result(declaration);
    const bool code = number.find_first_not_of("0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ") == std::string::npos;
    const std::string plain = "no check digit in this scheme";
    if (number.size() != 17) {
        // One character too many or too few of a modern number is a slip, not an older scheme.
        const bool slip = code && (number.size() == 16 || number.size() == 18);
        result.put("valid", !slip,
                   slip ? fmt::format("no: 17 characters are wanted, {} were given", number.size())
                        : "accepted as a plain frame number");
        result.put("check_digit", slip ? std::string("none") : plain);
        result.put("years", std::vector<int>{});
        result.say(fmt::format("{} characters: not a number of 17", number.size()));
        if (slip)
            result.warn("if the plate really shows so many, it is an older scheme without check digit");
        return result;
    }
    const auto sum = vinSum(number);
    if (!sum) {
        result.put("valid", false, "no: I, O and Q and signs are never used in a number of 17");
        result.put("check_digit", std::string("none"));
        result.put("years", std::vector<int>{});
        result.warn("read it again: 1 for I, 0 for O and Q");
        return result;
    }
    const char wanted = *sum % 11 == 10 ? 'X' : static_cast<char>('0' + *sum % 11);
    const bool valid = number[8] == wanted;
    result.say(fmt::format("sum of value x weight = {}, mod 11 = {}: check digit {}, position 9 shows {}",
                           *sum, *sum % 11, wanted, number[8]));
    result.put("valid", valid, valid ? "yes" : fmt::format("no: position 9 should be {}", wanted));
    result.put("check_digit", std::string(1, wanted));
    if (!valid)
        result.warn(
            "outside North America the check digit is not required: there a failed one is only a hint");
    else
        result.warn("a right check digit does not prove the number: letters and digits share values");
    const std::vector<int> years = yearsOf(number[9], static_cast<int>(given.date("today").year()));
    result.put("years", years);
    if (years.empty())
        result.warn("position 10 is no year code; outside North America it often is not");
    else
        result.warn("the year code repeats every 30 years, and is only a hint outside North America");
    return result;
}

} // namespace

std::optional<int> vinValue(char c) {
    constexpr std::string_view letters = "ABCDEFGHJKLMNPRSTUVWXYZ";
    constexpr std::array values{1, 2, 3, 4, 5, 6, 7, 8, 1, 2, 3, 4, 5, 7, 9, 2, 3, 4, 5, 6, 7, 8, 9};
    if (c >= '0' && c <= '9')
        return c - '0';
    const auto at = letters.find(c);
    return at == std::string_view::npos ? std::nullopt : std::optional(values.at(at));
}

int vinWeight(int position) {
    constexpr std::array weights{8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2};
    return weights.at(static_cast<std::size_t>(position - 1));
}

std::optional<int> vinSum(std::string_view number) {
    if (number.size() != 17)
        return std::nullopt;
    int sum = 0;
    for (int position = 1; position <= 17; ++position) {
        const auto value = vinValue(number[static_cast<std::size_t>(position - 1)]);
        if (!value)
            return std::nullopt;
        sum += *value * vinWeight(position);
    }
    return sum;
}

std::optional<int> vinYear(char code) {
    constexpr std::string_view codes = "ABCDEFGHJKLMNPRSTVWXY123456789";
    const auto at = codes.find(code);
    return at == std::string_view::npos ? std::nullopt : std::optional(1980 + static_cast<int>(at));
}

Calculation vin() {
    Declaration d;
    d.name = "vin";
    d.title = "Frame number";
    d.purpose = "Whether a frame number was read rightly, and what years its code may mean.";
    d.formula = {"sum of value x weight, mod 11; 10 is X"};
    d.inputs = {text("number", "Number", "as stamped in the frame, 17 characters or an older number"),
                date("today", "Today", "years that have not come are left out").withDefault("today")};
    d.outputs = {textOut("valid", "Valid"), textOut("check_digit", "Check digit"),
                 textOut("years", "Possible years")};
    d.sources = {"49 CFR 565.15 tables III to VII", "ISO 3779"};
    d.cautions = {
        "compare the frame with the papers: a number that fits its check digit can still be the wrong one",
        "older and many European and Asian numbers have no check digit"};
    d.example = {{{"number", "1M8GDM9AXKP042788"}, {"today", "2026-11-25"}},
                 {{"valid", "yes"}, {"check_digit", "X"}, {"years", "1989, 2019"}}};
    return {d, work};
}

} // namespace undercowl::trade
