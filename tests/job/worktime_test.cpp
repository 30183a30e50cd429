#include "core/job/worktime.h"

#include <catch2/catch.hpp>

using namespace undercowl::job;

namespace {

constexpr TimeMs minute = 60'000;

WorkSpan span(const char* task, TimeMs from, std::optional<TimeMs> to) {
    WorkSpan made;
    made.id = task;
    made.task = task;
    made.started.at = from;
    if (to)
        made.stopped = Said{"", "", *to};
    return made;
}

} // namespace

TEST_CASE("Minutes are summed by task, and a begun one counts") {
    Job job;
    job.spans = {span("a", 0, 20 * minute), span("a", 30 * minute, 45 * minute + 1),
                 span("b", 0, 5 * minute)};
    CHECK(minutesSpent(job, "a", 0) == 36);
    CHECK(minutesSpent(job, "b", 0) == 5);
    CHECK(minutesSpent(job, 0) == 41);
    CHECK(running(job).empty());
}

TEST_CASE("A watch that runs counts up to now, one that ran all night does not count until it is corrected") {
    Job job;
    job.spans = {span("a", 0, {})};
    CHECK(running(job).size() == 1);
    CHECK(minutesSpent(job, "a", 30 * minute) == 30);
    CHECK_FALSE(forgotten(job.spans[0], forgottenAfterMinutes * minute));
    CHECK(forgotten(job.spans[0], (forgottenAfterMinutes + 1) * minute));
    CHECK(minutesSpent(job, "a", 14 * 60 * minute) == 0);
    job.spans[0].minutes = 90;
    CHECK(minutesSpent(job, "a", 14 * 60 * minute) == 90);
}

TEST_CASE("A clock that was set back gives no time") {
    CHECK(minutesOf(span("a", 50 * minute, 10 * minute), 0) == 0);
}
