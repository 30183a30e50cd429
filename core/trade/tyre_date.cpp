#include "core/trade/calculations.h"

#include "core/units/format.h"

#include <fmt/format.h>

#include <chrono>

namespace undercowl::trade {
namespace {

using units::Date;
using units::Dimension;
using namespace std::chrono;

// 49 CFR 574.5: week 01 is the first full week from Sunday to Saturday.
sys_days firstDay(int week, int inYear) {
    const sys_days firstSunday{year{inYear} / January / Sunday[1]};
    return firstSunday + days{7 * (week - 1)};
}

double ageYears(sys_days made, Date today) {
    return static_cast<double>((sys_days{today} - made).count()) / 365.25;
}

void judgeAge(Result& result, const Given& given, double youngest, double oldest) {
    if (!given.has("age_limit"))
        return;
    const double limit = given.in("age_limit", Dimension::Time, "year");
    result.say(fmt::format("age between {:.2f} and {:.2f} years, limit of the shop {:.4g} years", youngest,
                           oldest, limit));
    if (oldest <= limit)
        result.decide(verdict::Answer::Within);
    else if (youngest > limit)
        result.decide(verdict::Answer::Outside);
    else
        result.decide(verdict::Answer::TooClose);
}

Outcome threeDigits(const Declaration& declaration, const Given& given, int week, int digit) {
    Result result(declaration);
    std::vector<int> years;
    for (const int decade : {1970, 1980, 1990})
        if (firstDay(week, decade + digit) <= sys_days{given.date("today")})
            years.push_back(decade + digit);
    result.put("week", week);
    result.say(fmt::format(
        "three digits: week {} of a year before 2000 that ends in {}; the decade is not in the code", week,
        digit));
    const double youngest = ageYears(firstDay(week, years.back()) + days{6}, given.date("today"));
    const double oldest = ageYears(firstDay(week, years.front()), given.date("today"));
    result.put("years", years);
    result.put("age_years", youngest, 3);
    result.warn("age is that of the youngest possible year: the tyre may be ten or twenty years older");
    judgeAge(result, given, youngest, oldest);
    return result;
}

Outcome work(const Declaration& declaration, const Given& given) {
    const std::string code = given.text("code").substr(given.text("code").find_last_of(' ') + 1);
    const std::string shape =
        "the last four digits of the DOT code, week and year, such as 2508; three before 2000";
    if ((code.size() != 3 && code.size() != 4) || code.find_first_not_of("0123456789") != std::string::npos)
        return given.problem("code", "is not a date code", shape);
    const int week = (code[0] - '0') * 10 + (code[1] - '0');
    if (week < 1 || week > 53)
        return given.problem("code", fmt::format("names week {:02}, which does not exist", week),
                             "weeks 01 to 53; " + shape);
    if (code.size() == 3)
        return threeDigits(declaration, given, week, code[2] - '0');
    const int inYear = 2000 + (code[2] - '0') * 10 + (code[3] - '0');
    const sys_days from = firstDay(week, inYear);
    if (from > sys_days{given.date("today")})
        return given.problem("code",
                             fmt::format("lies in the future: week {} of {} began on {}", week, inYear,
                                         units::formatDate(Date{from})),
                             "a code up to today, " + units::formatDate(given.date("today")));
    Result result(declaration);
    const sys_days to = from + days{6};
    const double age = ageYears(from, given.date("today"));
    result.put("week", week);
    result.put("year", std::to_string(inYear));
    result.values.back().second.value = units::Quantity{static_cast<double>(inYear), units::Unit()};
    result.put("age_years", age, 3);
    result.put("made_from", units::formatDate(Date{from}));
    result.put("made_to", units::formatDate(Date{to}));
    result.say(fmt::format("week {} of {}: {} to {}", week, inYear, units::formatDate(Date{from}),
                           units::formatDate(Date{to})));
    if (week == 53)
        result.warn("a week 53 is rare: read the code again");
    judgeAge(result, given, ageYears(to, given.date("today")), age);
    return result;
}

} // namespace

Calculation tyreDate() {
    Declaration d;
    d.name = "tyre-date";
    d.title = "Age of a tyre";
    d.purpose = "When a tyre was made, from the date code on its wall.";
    d.formula = {"two digits for the week, two for the year (one before 2000)",
                 "week 01 is the first full week from Sunday to Saturday"};
    d.inputs = {text("code", "Date code",
                     "the last four digits of the DOT code, week and year, such as 2508; three before 2000"),
                date("today", "Today", "the day to count to").withDefault("today"),
                quantity("age_limit", "Age limit of the shop", Dimension::Time, "year",
                         "what the shop has decided; there is no general law")
                    .optional()
                    .range(1, 30)};
    d.outputs = {numberOut("week", "Week"),          numberOut("year", "Year"),
                 textOut("years", "Possible years"), quantityOut("age_years", "Age", Dimension::Time, "year"),
                 textOut("made_from", "Made from"),  textOut("made_to", "Made to")};
    d.givesVerdict = true;
    d.sources = {"49 CFR 574.5 (tyre identification number, date code)"};
    d.cautions = {"a young tyre can be cracked, hard or damaged: look at it",
                  "the age limit is the shop's: common practice, no source"};
    d.example = {{{"code", "3208"}, {"today", "2026-11-25"}, {"age_limit", "10 years"}},
                 {{"week", "32"}, {"year", "2008"}, {"made_from", "2008-08-10"}, {"made_to", "2008-08-16"}}};
    return {d, work};
}

} // namespace undercowl::trade
