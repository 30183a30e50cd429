#include "qml/prove/dueview.h"

#include "core/job/proving.h"
#include "core/units/date.h"
#include "qml/shell/words.h"

#include <algorithm>
#include <span>
#include <utility>

namespace undercowl::ui {

namespace {

constexpr std::size_t doneLookedAt = 200; // jobs handed over last; older ones are found by Find
constexpr std::size_t atATime = 8;

Result<std::vector<DueView::Due>> dueIn(const ShopStore& store, std::span<const store::JobLine> jobs) {
    std::vector<DueView::Due> all;
    for (const store::JobLine& line : jobs) {
        const auto job = store.job(line.id);
        if (!job)
            return tl::unexpected(job.error());
        for (const job::Recheck& recheck : job->rechecks)
            if (const auto due = job::dueAt(*job, recheck))
                all.push_back({*due, Line{.id = text(line.id),
                                          .title = text(recheck.what),
                                          .detail = text(line.machine) + QStringLiteral(" · ") +
                                                    dateWords(dayOf(*due))}});
    }
    return all;
}

} // namespace

void DueView::componentComplete() {
    complete_ = true;
    read();
}

void DueView::setActive(bool active) {
    if (std::exchange(active_, active) == active)
        return;
    read();
    emit changed();
}

void DueView::read() {
    if (!active_ || !complete_ || std::exchange(reading_, true))
        return;
    session_->ask(
        this, [](ShopStore& store) { return store.jobs(doneLookedAt); },
        [this](const Result<std::vector<store::JobLine>>& jobs) {
            if (!jobs) {
                reading_ = false;
                return session_->report(jobs.error());
            }
            std::vector<store::JobLine> some = *jobs;
            std::erase_if(some, [](const store::JobLine& line) { return !line.rechecks; });
            readOn(std::move(some), 0, {});
        });
}

void DueView::readOn(std::vector<store::JobLine> jobs, std::size_t from, std::vector<Due> found) {
    if (from >= jobs.size())
        return show(std::move(found));
    const std::size_t count = std::min(atATime, jobs.size() - from);
    const std::vector<store::JobLine> some(jobs.begin() + static_cast<std::ptrdiff_t>(from),
                                           jobs.begin() + static_cast<std::ptrdiff_t>(from + count));
    session_->ask(
        this, [some](ShopStore& store) { return dueIn(store, some); },
        [this, jobs = std::move(jobs), next = from + count,
         found = std::move(found)](const Result<std::vector<Due>>& more) {
            if (!more) {
                reading_ = false;
                return session_->report(more.error());
            }
            std::vector<Due> all = found;
            all.insert(all.end(), more->begin(), more->end());
            readOn(jobs, next, std::move(all));
        });
}

void DueView::show(std::vector<Due> found) {
    reading_ = false;
    std::ranges::stable_sort(found, {}, &Due::at);
    std::vector<Line> lines;
    late_ = 0;
    for (Due& one : found) {
        if (one.at < session_->now()) {
            one.line.mark = QStringLiteral("due");
            ++late_;
        }
        lines.push_back(std::move(one.line));
    }
    lines_.setLines(std::move(lines));
    ready_ = true;
    emit changed();
}

} // namespace undercowl::ui
