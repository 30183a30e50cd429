#include "qml/prove/dueview.h"

#include "core/job/proving.h"
#include "core/units/date.h"
#include "qml/shell/words.h"

#include <algorithm>

namespace undercowl::ui {

namespace {

constexpr std::size_t doneLookedAt = 200; // jobs handed over last; older ones are found by Find

struct Due {
    job::TimeMs at{};
    Line line;
};

Result<std::vector<Due>> readDue(const ShopStore& store) {
    const auto jobs = store.jobs(doneLookedAt);
    if (!jobs)
        return tl::unexpected(jobs.error());
    std::vector<Due> all;
    for (const store::JobLine& line : *jobs) {
        const auto job = store.job(line.id);
        if (!job)
            return tl::unexpected(job.error());
        for (const job::Recheck& recheck : job->rechecks)
            if (const auto due = job::dueAt(*job, recheck))
                all.push_back({*due, Line{.id = text(line.id),
                                          .title = text(recheck.what),
                                          .detail = text(line.machine) + QStringLiteral(" · ") +
                                                    text(units::formatDate(dayOf(*due)))}});
    }
    std::ranges::stable_sort(all, {}, &Due::at);
    return all;
}

} // namespace

void DueView::componentComplete() {
    session_->ask(
        this, [](ShopStore& store) { return readDue(store); },
        [this](const Result<std::vector<Due>>& due) {
            if (!due)
                return session_->report(due.error());
            std::vector<Line> lines;
            late_ = 0;
            for (const Due& one : *due) {
                Line line = one.line;
                if (one.at < session_->now()) {
                    line.mark = QStringLiteral("due");
                    ++late_;
                }
                lines.push_back(std::move(line));
            }
            lines_.setLines(std::move(lines));
            ready_ = true;
            emit changed();
        });
}

} // namespace undercowl::ui
