// What a job costs: time, parts and what the mechanic adds, with tax, in exact decimals; and what was
// expected.
#pragma once

#include "core/job/message.h"
#include "core/job/model.h"
#include "core/job/money.h"

#include <string>
#include <vector>

namespace undercowl::job {

struct CostRow {
    enum class Kind : std::uint8_t { Work, Part, Line } kind{};
    std::string what; // task, part with number, line; empty for work that belongs to no task
    int minutes{};    // of work
    Decimal net;      // rounded to the currency's places
};

struct Cost {
    std::string currency;
    std::vector<CostRow> rows; // work in order of the tasks, parts, lines
    Decimal net;
    std::string taxPercent; // as typed; empty: none
    Decimal tax;            // of the sum, rounded once
    Decimal gross;
    int minutes{};                    // spent, over all
    int minutesExpected{};            // estimated on tasks, and on findings that became none
    std::vector<TypedValue> approved; // by the owner, one sum for each currency
    std::vector<Message> doubts;      // what is not in the sum, and why
};

// Nothing until the terms are said. 'now' ends watches that still run (see worktime.h). A part counts when it
// is fitted and its price has the currency of the terms; prices are without tax.
[[nodiscard]] std::optional<Cost> costOf(const Job& job, TimeMs now);

// "67.67 EUR", with the currency's places and a space that no line is broken at.
[[nodiscard]] std::string money(Decimal value, const std::string& currency);

} // namespace undercowl::job
