#include "core/job/refit.h"

#include <algorithm>

namespace undercowl::job {
namespace {

bool waits(const Job& job, const StripStep& step) {
    const Task* task = findTask(job, step.task);
    return task != nullptr && task->waiting;
}

// What was stripped later within the same task lies over this step and goes back first.
std::vector<const StripStep*> openBehind(const Job& job, const StripStep& step) {
    std::vector<const StripStep*> open;
    for (const StripStep& other : job.steps)
        if (other.task == step.task && other.order > step.order && !other.refitted)
            open.push_back(&other);
    std::sort(open.begin(), open.end(), [](const auto* a, const auto* b) { return a->order > b->order; });
    return open;
}

} // namespace

std::vector<RefitStep> refitOrder(const Job& job) {
    std::vector<const StripStep*> steps;
    for (const StripStep& step : job.steps)
        steps.push_back(&step);
    std::sort(steps.begin(), steps.end(), [](const auto* a, const auto* b) { return a->order > b->order; });
    std::vector<RefitStep> order;
    order.reserve(steps.size());
    for (const StripStep* step : steps)
        order.push_back({step, photosAbout(job, step->id), step->refitted.has_value(), waits(job, *step),
                         openBehind(job, *step)});
    return order;
}

std::optional<RefitStep> nextRefit(const Job& job) {
    for (RefitStep& step : refitOrder(job))
        if (!step.done && !step.waiting && step.behind.empty())
            return std::move(step);
    return std::nullopt;
}

} // namespace undercowl::job
