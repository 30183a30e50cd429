// What is asked before a finding is said to be put right.
#pragma once

#include "core/job/model.h"

#include <vector>

namespace undercowl::job {

struct Settling {
    bool asksHow{}; // unsafe: what was done is said in words
    std::vector<const Part*>
        notFitted;                 // parts that it takes and that are not on the machine; owned by the job
    std::vector<const Task*> done; // tasks made of it that are finished: what was done
};

[[nodiscard]] Settling settling(const Job& job, const Finding& finding);

// Parts that are noted for the finding or a step of its tasks, or that name the same thing, and are not
// fitted.
[[nodiscard]] std::vector<const Part*> partsNotFitted(const Job& job, const Finding& finding);

} // namespace undercowl::job
