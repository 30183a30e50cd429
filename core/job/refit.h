// The refit order: the strip steps backwards, and tasks in the order in which one needs another.
#pragma once

#include "core/job/message.h"
#include "core/job/model.h"

#include <tl/expected.hpp>

#include <vector>

namespace undercowl::job {

struct RefitStep {
    const StripStep* strip{};         // owned by the job
    std::vector<const Photo*> photos; // of the strip step
    bool done{};
    bool waiting{}; // its task waits
    std::vector<const StripStep*>
        behind; // steps of the same task that were stripped later and are not refitted yet
    std::vector<const Task*> needs; // tasks that have to be finished first and are not
};

// All refit steps in the order in which they are to be done: a topological order of the strip order reversed
// within each task (what was taken off later lies over it and goes back first) and of the tasks' 'after'.
// Among the steps that are free to go, the mechanic's own wish (Job::refitWish) goes first, then what was
// stripped last. A task that waits does not hold up another one that does not need it: its steps stay in the
// list, marked waiting. Tasks that need each other in a circle cannot be ordered: there the circle is cut and
// 'needs' still names what is missing.
[[nodiscard]] std::vector<RefitStep> refitOrder(const Job& job);

// The next one to do: the first that is neither done nor waiting nor behind an open one, and whose task needs
// no other that is open. Nothing when all is done or waits.
[[nodiscard]] std::optional<RefitStep> nextRefit(const Job& job);

// The order as a wish in which the step changes places with the open one before it ('earlier') or after it.
// Refused with the reason where one of the two needs the other, or there is none to change places with.
[[nodiscard]] tl::expected<std::vector<Id>, Message> moved(const Job& job, std::string_view step,
                                                           bool earlier);

// Parts for the task's steps, or for the finding that it answers, that are not fitted yet.
[[nodiscard]] std::vector<const Part*> partsToFit(const Job& job, const Task& task);

// A task is finished when the mechanic said so, or when all that was stripped for it is on again and no part
// of partsToFit() is left; one without steps only by saying so. One that waits is not.
[[nodiscard]] bool finished(const Job& job, const Task& task);

// Whether tasks would need each other in a circle if 'task' came after 'other'. A task that is its own
// precondition is a circle too.
[[nodiscard]] bool closesCircle(const Job& job, std::string_view task, std::string_view other);

} // namespace undercowl::job
