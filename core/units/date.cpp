#include "core/units/date.h"

#include "core/units/spelling.h"

namespace undercowl::units {
namespace {

int digitsAt(std::string_view text, std::size_t from, std::size_t count) {
    int value = 0;
    for (const char c : text.substr(from, count))
        value = value * 10 + (c - '0');
    return value;
}

std::string padded(unsigned value) {
    return (value < 10 ? "0" : "") + std::to_string(value);
}

} // namespace

tl::expected<Date, UnitError> parseDate(std::string_view text) {
    const std::string plain = plainBlanks(text);
    const std::string quoted = "\"" + plain + "\"";
    const auto refuse = [](std::string message) {
        return tl::unexpected(UnitError{UnitError::Kind::NotANumber, std::move(message)});
    };
    bool shaped = plain.size() == 10 && plain[4] == '-' && plain[7] == '-';
    for (std::size_t i = 0; shaped && i < plain.size(); ++i)
        shaped = i == 4 || i == 7 || (plain[i] >= '0' && plain[i] <= '9');
    if (!shaped)
        return refuse(quoted +
                      " is not a date as it is read here: write year, month and day, such as 2026-11-25");
    const Date date{std::chrono::year{digitsAt(plain, 0, 4)},
                    std::chrono::month{static_cast<unsigned>(digitsAt(plain, 5, 2))},
                    std::chrono::day{static_cast<unsigned>(digitsAt(plain, 8, 2))}};
    if (!date.ok())
        return refuse(quoted + " is not a day of the calendar");
    if (date.year() < std::chrono::year{1885} || date.year() > std::chrono::year{2200})
        return refuse(quoted + " is out of range: the year must be from 1885 to 2200");
    return date;
}

std::string formatDate(Date date) {
    return std::to_string(static_cast<int>(date.year())) + "-" + padded(static_cast<unsigned>(date.month())) +
           "-" + padded(static_cast<unsigned>(date.day()));
}

int daysBetween(Date from, Date to) {
    return static_cast<int>((std::chrono::sys_days{to} - std::chrono::sys_days{from}).count());
}

} // namespace undercowl::units
