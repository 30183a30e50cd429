#include "core/job/settling.h"

#include "core/job/refit.h"
#include "core/job/safety.h"

#include <algorithm>

namespace undercowl::job {

std::vector<const Part*> partsNotFitted(const Job& job, const Finding& finding) {
    std::vector<const Part*> parts;
    for (const Part& part : job.parts) {
        if (!outstanding(part))
            continue;
        const StripStep* step = findStep(job, part.about);
        const Task* task = step == nullptr ? nullptr : findTask(job, step->task);
        const bool linked = part.about == finding.id || (task != nullptr && task->finding == finding.id);
        if (linked || nameTheSame(part.name, finding.text) || nameTheSame(part.name, finding.toDo))
            parts.push_back(&part);
    }
    return parts;
}

Settling settling(const Job& job, const Finding& finding) {
    Settling asked;
    asked.asksHow = finding.severity == Severity::Unsafe;
    asked.notFitted = partsNotFitted(job, finding);
    for (const Task& task : job.tasks)
        if (task.finding == finding.id && finished(job, task))
            asked.done.push_back(&task);
    return asked;
}

} // namespace undercowl::job
