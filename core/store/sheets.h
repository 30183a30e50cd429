// A shop as spreadsheets, and spreadsheets as a plan for it. Shop offers jobs(), job(), machine() and owner()
// as Store does.
#pragma once

#include "core/job/sheets.h"
#include "core/journal/sheet.h"
#include "core/store/store.h"

#include <algorithm>
#include <charconv>
#include <string>
#include <utility>
#include <vector>

namespace undercowl::store {

template<typename Shop>
[[nodiscard]] Result<std::vector<std::pair<std::string, std::string>>> sheetsOf(const Shop& shop) {
    const auto jobs = shop.jobs();
    if (!jobs)
        return tl::unexpected(jobs.error());
    std::vector<job::SheetJob> all;
    for (const JobLine& line : *jobs) {
        auto job = shop.job(line.id);
        if (!job)
            return tl::unexpected(job.error());
        auto machine = shop.machine(job->machine);
        auto owner = shop.owner(job->owner);
        all.push_back({*std::move(job), machine.value_or(job::Machine{}), owner.value_or(job::Owner{})});
    }
    return job::sheets(all);
}

// 'year' heads the numbers of jobs that a sheet opens without one: "2026-033" follows the shop's last of
// 2026. Refused: a file that is no sheet, with the remedy.
template<typename Shop>
[[nodiscard]] Result<journal::SheetPlan> planOf(const Shop& shop, std::string_view text, int year,
                                                const std::function<Id()>& newId) {
    const auto jobs = shop.jobs();
    if (!jobs)
        return tl::unexpected(jobs.error());
    std::vector<journal::KnownJob> known;
    int last = 0;
    const std::string head = std::to_string(year) + "-";
    for (const JobLine& line : *jobs) {
        known.push_back({line.id, line.number, line.frameNumber});
        int number = 0;
        if (line.number.starts_with(head) &&
            std::from_chars(line.number.data() + head.size(), line.number.data() + line.number.size(), number)
                    .ec == std::errc{})
            last = std::max(last, number);
    }
    auto plan = journal::planSheet(
        text, known,
        [&shop](const Id& id) {
            const auto job = shop.job(id);
            return job ? job->parts : std::vector<job::Part>{};
        },
        newId,
        [&last, &head] {
            std::string digits = std::to_string(++last);
            return head + std::string(digits.size() < 3 ? 3 - digits.size() : 0, '0') + digits;
        });
    if (!plan)
        return tl::unexpected(Problem{Fault::Refused, plan.error()});
    return *std::move(plan);
}

} // namespace undercowl::store
