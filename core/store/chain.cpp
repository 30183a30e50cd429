#include "core/store/chain.h"

#include <algorithm>
#include <tuple>
#include <vector>

namespace undercowl::store {

using journal::Entry;

std::optional<std::string> linkProblem(const Entry& before, const Entry& after) {
    if (after.previous != before.hash) {
        return "entry " + after.id + ": does not follow entry " + before.id +
               ", the one before it of device " + after.device + "; the chain is broken";
    }
    if (!(before.clock < after.clock)) {
        return "entry " + after.id + ": its clock does not come after that of entry " + before.id;
    }
    return std::nullopt;
}

std::optional<std::string> chainProblem(std::span<const Entry> entries) {
    std::vector<const Entry*> sorted;
    sorted.reserve(entries.size());
    for (const Entry& entry : entries) {
        sorted.push_back(&entry);
    }
    std::sort(sorted.begin(), sorted.end(), [](const Entry* a, const Entry* b) {
        return std::tie(a->device, a->number) < std::tie(b->device, b->number);
    });
    for (std::size_t i = 1; i < sorted.size(); ++i) {
        const Entry& before = *sorted[i - 1];
        const Entry& after = *sorted[i];
        if (before.device != after.device) {
            continue;
        }
        if (before.number == after.number && before.hash != after.hash) {
            return "entry " + after.id + ": device " + after.device + " has two different entries number " +
                   std::to_string(after.number) + "; one of two copies of its store went on apart";
        }
        if (before.number + 1 == after.number) {
            if (auto problem = linkProblem(before, after)) {
                return problem;
            }
        }
    }
    return std::nullopt;
}

} // namespace undercowl::store
