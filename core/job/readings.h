// Which readings still count.
#pragma once

#include "core/job/model.h"

namespace undercowl::job {

// The same thing was measured again later, at the same step or task: the later word counts.
[[nodiscard]] bool measuredAgain(const Job& job, const Reading& reading);

} // namespace undercowl::job
