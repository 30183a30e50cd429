// The refit order: the strip steps backwards.
#pragma once

#include "core/job/model.h"

#include <vector>

namespace undercowl::job {

struct RefitStep {
    const StripStep* strip{};         // owned by the job
    std::vector<const Photo*> photos; // of the strip step
    bool done{};
    bool waiting{}; // its task waits
    std::vector<const StripStep*>
        behind; // steps of the same task that were stripped later and are not refitted yet
};

// All refit steps in the order in which they are to be done: strip order reversed. A task that waits does not
// hold up another one: its steps stay in the list, marked waiting.
[[nodiscard]] std::vector<RefitStep> refitOrder(const Job& job);

// The next one to do: the first that is neither done nor waiting nor behind an open one. Nothing when all is
// done or waits.
[[nodiscard]] std::optional<RefitStep> nextRefit(const Job& job);

} // namespace undercowl::job
