#include "core/job/refit.h"

#include <algorithm>
#include <iterator>
#include <limits>
#include <set>
#include <utility>

namespace undercowl::job {
namespace {

bool waits(const Job& job, const StripStep& step) {
    const Task* task = findTask(job, step.task);
    return task != nullptr && task->waiting;
}

// What was stripped later within the same task lies over this step and goes back first.
bool liesOver(const StripStep& upper, const StripStep& lower) {
    return upper.task == lower.task && upper.order > lower.order;
}

std::vector<const StripStep*> openBehind(const Job& job, const StripStep& step) {
    std::vector<const StripStep*> open;
    for (const StripStep& other : job.steps)
        if (liesOver(other, step) && !other.refitted)
            open.push_back(&other);
    std::sort(open.begin(), open.end(), [](const auto* a, const auto* b) { return a->order > b->order; });
    return open;
}

// All tasks that 'task' comes after, near or far.
void gather(const Job& job, std::string_view task, std::set<std::string_view>& reached) {
    const Task* from = findTask(job, task);
    if (from == nullptr)
        return;
    for (const Id& before : from->after)
        if (const Task* next = findTask(job, before); next != nullptr && reached.insert(next->id).second)
            gather(job, next->id, reached);
}

std::set<std::string_view> allBefore(const Job& job, std::string_view task) {
    std::set<std::string_view> reached;
    gather(job, task, reached);
    return reached;
}

std::vector<const Task*> openNeeds(const Job& job, const StripStep& step) {
    std::vector<const Task*> open;
    const auto before = allBefore(job, step.task);
    for (const Task& task : job.tasks)
        if (task.id != step.task && before.contains(task.id) && !finished(job, task))
            open.push_back(&task);
    return open;
}

std::size_t wishOf(const Job& job, const StripStep& step) {
    const auto wish = std::find(job.refitWish.begin(), job.refitWish.end(), step.id);
    return wish == job.refitWish.end() ? std::numeric_limits<std::size_t>::max()
                                       : static_cast<std::size_t>(wish - job.refitWish.begin());
}

std::vector<const StripStep*> ordered(const Job& job) {
    std::vector<const StripStep*> left;
    for (const StripStep& step : job.steps)
        left.push_back(&step);
    std::sort(left.begin(), left.end(), [&](const auto* a, const auto* b) {
        return std::pair{wishOf(job, *a), -a->order} < std::pair{wishOf(job, *b), -b->order};
    });
    // Which tasks each step's task comes after; a task in a circle with it is left out, which cuts the
    // circle.
    std::vector<std::pair<std::string_view, std::set<std::string_view>>> before;
    for (const Task& task : job.tasks) {
        auto tasks = allBefore(job, task.id);
        std::erase_if(tasks, [&](std::string_view other) { return allBefore(job, other).contains(task.id); });
        before.emplace_back(task.id, std::move(tasks));
    }
    const auto comesAfter = [&](const StripStep& step, const StripStep& other) {
        const auto found = std::find_if(before.begin(), before.end(),
                                        [&](const auto& each) { return each.first == step.task; });
        return found != before.end() && found->second.contains(other.task);
    };
    std::vector<const StripStep*> order;
    order.reserve(left.size());
    while (!left.empty()) {
        const auto free = std::find_if(left.begin(), left.end(), [&](const StripStep* step) {
            return std::none_of(left.begin(), left.end(), [&](const StripStep* other) {
                return liesOver(*other, *step) || comesAfter(*step, *other);
            });
        });
        // Both relations and their union are free of circles, so that there is always one.
        order.push_back(*free);
        left.erase(free);
    }
    return order;
}

} // namespace

std::vector<const Part*> partsToFit(const Job& job, const Task& task) {
    std::vector<const Part*> open;
    for (const Part& part : job.parts) {
        const StripStep* step = findStep(job, part.about);
        const bool ofTask =
            step != nullptr ? step->task == task.id : !part.about.empty() && part.about == task.finding;
        if (ofTask && outstanding(part))
            open.push_back(&part);
    }
    return open;
}

bool finished(const Job& job, const Task& task) {
    if (task.waiting)
        return false;
    if (task.done)
        return true;
    const auto ofTask = [&](const StripStep& step) { return step.task == task.id; };
    return std::any_of(job.steps.begin(), job.steps.end(), ofTask) &&
           std::all_of(job.steps.begin(), job.steps.end(),
                       [&](const StripStep& step) { return !ofTask(step) || step.refitted.has_value(); }) &&
           partsToFit(job, task).empty();
}

bool closesCircle(const Job& job, std::string_view task, std::string_view other) {
    return task == other || allBefore(job, other).contains(task);
}

std::vector<RefitStep> refitOrder(const Job& job) {
    std::vector<RefitStep> order;
    order.reserve(job.steps.size());
    for (const StripStep* step : ordered(job))
        order.push_back({step, photosAbout(job, step->id), step->refitted.has_value(), waits(job, *step),
                         openBehind(job, *step), openNeeds(job, *step)});
    return order;
}

tl::expected<std::vector<Id>, Message> moved(const Job& job, std::string_view step, bool earlier) {
    std::vector<Id> wish; // what is on already stands first and is in nobody's way
    std::vector<const StripStep*> open;
    for (const StripStep* each : ordered(job))
        if (each->refitted)
            wish.push_back(each->id);
        else
            open.push_back(each);
    const auto at =
        std::find_if(open.begin(), open.end(), [&](const auto* each) { return each->id == step; });
    if (at == open.end())
        return tl::unexpected(Message{"refit.order.done", {}});
    if (at == (earlier ? open.begin() : std::prev(open.end())))
        return tl::unexpected(Message{earlier ? "refit.order.first" : "refit.order.last", {}});
    const auto first = earlier ? std::prev(at) : at;
    const auto second = std::next(first);
    if (liesOver(**first, **second))
        return tl::unexpected(Message{"refit.order.lies-over", {(*first)->title, (*second)->title}});
    if (allBefore(job, (*second)->task).contains((*first)->task)) {
        const Task* before = findTask(job, (*first)->task);
        const Task* after = findTask(job, (*second)->task);
        return tl::unexpected(Message{"refit.order.task", {before->title, after->title}});
    }
    std::iter_swap(first, second);
    for (const StripStep* each : open)
        wish.push_back(each->id);
    return wish;
}

std::optional<RefitStep> nextRefit(const Job& job) {
    for (RefitStep& step : refitOrder(job))
        if (!step.done && !step.waiting && step.behind.empty() && step.needs.empty())
            return std::move(step);
    return std::nullopt;
}

} // namespace undercowl::job
