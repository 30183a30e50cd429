// Time spent on tasks: watches started and stopped with one touch, and those that were forgotten.
#pragma once

#include "core/job/model.h"

#include <string_view>
#include <vector>

namespace undercowl::job {

// A watch that runs longer than this was forgotten, in all likelihood: nobody works that long at a stretch.
// Common practice, no source.
inline constexpr int forgottenAfterMinutes = 4 * 60;

// Spans whose watch still runs, in order of starting; owned by the job.
[[nodiscard]] std::vector<const WorkSpan*> running(const Job& job);

// Whole minutes, begun ones counted as minutes; as corrected by the mechanic if they were. For a running
// watch up to 'now'. A clock that was set back gives 0.
[[nodiscard]] int minutesOf(const WorkSpan& span, TimeMs now);

[[nodiscard]] bool forgotten(const WorkSpan& span, TimeMs now);

// Over the spans of one task; with an empty id over the spans that belong to no task. Forgotten watches are
// left out until someone says how long it really was: a night is no work.
[[nodiscard]] int minutesSpent(const Job& job, std::string_view task, TimeMs now);
[[nodiscard]] int minutesSpent(const Job& job, TimeMs now); // over all

} // namespace undercowl::job
