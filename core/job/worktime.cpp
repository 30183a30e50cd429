#include "core/job/worktime.h"

#include <algorithm>
#include <limits>

namespace undercowl::job {
namespace {

constexpr TimeMs msPerMinute = 60'000;

int sum(const Job& job, TimeMs now, const auto& belongs) {
    int minutes = 0;
    for (const WorkSpan& span : job.spans)
        if (belongs(span) && !forgotten(span, now))
            minutes += minutesOf(span, now);
    return minutes;
}

} // namespace

std::vector<const WorkSpan*> running(const Job& job) {
    std::vector<const WorkSpan*> spans;
    for (const WorkSpan& span : job.spans)
        if (!span.stopped)
            spans.push_back(&span);
    return spans;
}

int minutesOf(const WorkSpan& span, TimeMs now) {
    if (span.minutes)
        return *span.minutes;
    const TimeMs end = span.stopped ? span.stopped->at : now;
    const TimeMs minutes = (std::max<TimeMs>(0, end - span.started.at) + msPerMinute - 1) / msPerMinute;
    return static_cast<int>(std::min<TimeMs>(minutes, std::numeric_limits<int>::max() / 1000));
}

bool forgotten(const WorkSpan& span, TimeMs now) {
    return !span.minutes && minutesOf(span, now) > forgottenAfterMinutes;
}

int minutesSpent(const Job& job, std::string_view task, TimeMs now) {
    return sum(job, now, [task](const WorkSpan& span) { return span.task == task; });
}

int minutesSpent(const Job& job, TimeMs now) {
    return sum(job, now, [](const WorkSpan& /*span*/) { return true; });
}

} // namespace undercowl::job
