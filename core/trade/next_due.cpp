#include "core/trade/calculations.h"

#include "core/units/format.h"

#include <fmt/format.h>

#include <chrono>
#include <cmath>

namespace undercowl::trade {
namespace {

using units::Date;
using units::Dimension;
using namespace std::chrono;

// "6 months", "1 year", "90 d", "2 weeks": whole months and years by the calendar, the rest in days.
tl::expected<Date, std::string> after(Date last, const std::string& every) {
    const auto split = units::splitQuantity(every);
    const std::string possible = "a time such as 6 months, 1 year or 90 days";
    if (!split || split->number.value <= 0)
        return tl::unexpected(possible);
    const double count = split->number.value;
    const std::string& unit = split->unitText;
    const bool whole = count == std::floor(count) && count < 1200;
    if (unit.starts_with("month") || unit == "mo" || unit.starts_with("year") || unit == "yr") {
        if (!whole)
            return tl::unexpected(std::string("a whole number of months or years"));
        Date due = last + (unit.front() == 'm' ? months{static_cast<int>(count)}
                                               : months{12 * static_cast<int>(count)});
        if (!due.ok()) // the 31st of a shorter month: its last day
            due = due.year() / due.month() / std::chrono::last;
        return due;
    }
    const auto time = units::parseQuantity(every, Dimension::Time);
    if (!time || time->quantity().base() < 86400 || time->quantity().base() > 3.2e9)
        return tl::unexpected(possible);
    return Date{sys_days{last} + days{static_cast<int>(std::lround(time->quantity().base() / 86400))}};
}

Outcome byDate(const Declaration& declaration, const Given& given, Date last) {
    const auto due = after(last, given.text("every"));
    if (!due)
        return given.problem("every", "does not fit a date", due.error());
    Date now = given.date("today");
    if (given.has("now")) {
        const auto typed = units::parseDate(given.text("now"));
        if (!typed)
            return given.problem("now", "last is a date, this is none", "a date such as 2026-11-25");
        now = *typed;
    }
    Result result(declaration);
    const int left = units::daysBetween(now, *due);
    result.say(fmt::format("{} + {} = {}; from {} that is {} days", units::formatDate(last),
                           given.text("every"), units::formatDate(*due), units::formatDate(now), left));
    result.put("due", units::formatDate(*due));
    result.put("left", units::Quantity{static_cast<double>(left), units::unit(Dimension::Time, "d")},
               fmt::format("{} days", left));
    if (left < 0)
        result.warn(fmt::format("overdue by {} days", -left));
    return result;
}

Outcome byDistance(const Declaration& declaration, const Given& given) {
    const units::Unit km = units::unit(Dimension::Length, "km");
    double value[3] = {};
    const char* keys[3] = {"last", "every", "now"};
    for (int i = 0; i < 3; ++i) {
        if (!given.has(keys[i]))
            return given.problem(keys[i], "is missing", "the odometer now, such as 12400 km");
        const auto read = units::parseQuantity(given.text(keys[i]), Dimension::Length, km);
        if (!read)
            return given.problem(keys[i], read.error().message,
                                 i == 0 ? "a date such as 2026-11-25 or a distance such as 12400 km"
                                        : "a distance such as 3000 km");
        value[i] = read->quantity().in(km);
        if (value[i] < 0 || (i == 1 && value[i] == 0) || value[i] > 1e7)
            return given.problem(keys[i], "is out of range", i == 1 ? "above 0 km" : "0 to 10000000 km");
    }
    Result result(declaration);
    const double due = value[0] + value[1];
    const double left = due - value[2];
    result.say(fmt::format("{:.6g} + {:.6g} = {:.6g} km; now {:.6g} km: {:.6g} km left", value[0], value[1],
                           due, value[2], left));
    result.put("due", units::Quantity{due, km}, units::format({due, km}, 7));
    result.put("left", units::Quantity{left, km}, units::format({left, km}, 7));
    if (left < 0)
        result.warn("overdue by " + units::format({-left, km}, 7));
    return result;
}

Outcome work(const Declaration& declaration, const Given& given) {
    if (const auto last = units::parseDate(given.text("last")))
        return byDate(declaration, given, *last);
    if (given.text("last").size() >= 8 && given.text("last").find_first_of("-/") != std::string::npos)
        return given.problem("last", units::parseDate(given.text("last")).error().message,
                             "a date such as 2026-11-25 or a distance such as 12400 km");
    return byDistance(declaration, given);
}

} // namespace

Calculation nextDue() {
    Declaration d;
    d.name = "next-due";
    d.title = "When it is due again";
    d.purpose = "The next date or odometer reading for work that comes again.";
    d.formula = {"due = last + every; left = due - now"};
    d.inputs = {text("last", "Last done", "a date such as 2026-11-25 or a distance such as 12400 km"),
                text("every", "Every", "6 months, 1 year, 90 days or 3000 km"),
                text("now", "Now", "the date or the odometer now; today where dates are meant").optional(),
                date("today", "Today", "taken as now for dates").withDefault("today")};
    d.outputs = {textOut("due", "Due"), textOut("left", "Left")};
    d.sources = {"calendar: months end on their last day where the day is missing"};
    d.cautions = {"the manual's interval wins; whichever of time and distance comes first counts"};
    d.example = {{{"last", "2026-08-31"}, {"every", "6 months"}, {"now", "2026-11-25"}},
                 {{"due", "2027-02-28"}, {"left", "95"}}};
    return {d, work};
}

} // namespace undercowl::trade
