// What is left of reading a gathering's wires back: those that do not match, those that nobody read.
#pragma once

#include "core/job/message.h"
#include "core/job/model.h"

#include <vector>

namespace undercowl::job {

struct WiresLeft {
    std::vector<wiring::PlaceKey> off;    // read back last as not matching, in either half
    std::vector<wiring::PlaceKey> unread; // known, and never read back: of the loom's half, or of the unit's
                                          // where nothing is known of the loom's
    std::size_t known{};                  // of that half; none of it proves nothing

    [[nodiscard]] bool none() const { return off.empty() && unread.empty(); }
};

[[nodiscard]] WiresLeft wiresLeft(const Job& job, const wiring::Gathering& gathering);

// The same in words, one message for each place that does not match and one for all that were not read.
[[nodiscard]] std::vector<Message> wiresAgainst(const WiresLeft& left);

// Of the step's gatherings those of which wires are left, in the order of the job; owned by the job.
[[nodiscard]] std::vector<const wiring::Gathering*> unreadGatherings(const Job& job, const StripStep& step);

} // namespace undercowl::job
