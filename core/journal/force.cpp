#include "core/journal/force.h"

#include <algorithm>
#include <cstddef>
#include <optional>
#include <unordered_map>

namespace undercowl::journal {
namespace {

using Places = std::unordered_map<std::string_view, std::size_t>;

std::vector<const Entry*> sortedOnce(std::string_view stream, std::span<const Entry> entries) {
    std::vector<const Entry*> sorted;
    for (const Entry& entry : entries)
        if (entry.stream == stream)
            sorted.push_back(&entry);
    // Ids break ties between entries that a broken device gave the same number, so that the order stays
    // total.
    std::sort(sorted.begin(), sorted.end(), [](const Entry* a, const Entry* b) {
        if (before(*a, *b))
            return true;
        return !before(*b, *a) && a->id < b->id;
    });
    const auto same = [](const Entry* a, const Entry* b) { return a->id == b->id; };
    sorted.erase(std::unique(sorted.begin(), sorted.end(), same), sorted.end());
    return sorted;
}

std::optional<std::size_t> earlier(const Places& places, const Id& target, std::size_t than) {
    const auto found = places.find(target);
    if (target.empty() || found == places.end() || found->second >= than)
        return std::nullopt;
    return found->second;
}

} // namespace

Forces inForce(std::string_view stream, std::span<const Entry> entries) {
    const std::vector<const Entry*> sorted = sortedOnce(stream, entries);
    Places places;
    for (std::size_t i = 0; i < sorted.size(); ++i)
        places.emplace(sorted[i]->id, i);

    Forces forces;
    for (const Entry* entry : sorted)
        forces.all.push_back({entry, false, false});
    std::vector<std::optional<std::size_t>> corrected(sorted.size()); // by which entry
    std::vector<bool> corrects(sorted.size());                        // stands in another one's place
    // From the last to the first: whatever acts on an entry comes after it, so its own state is settled when
    // it is met.
    for (std::size_t i = sorted.size(); i-- > 0;) {
        const Entry& entry = *sorted[i];
        if (forces.all[i].withdrawn)
            continue;
        if (entry.kind == "entry.withdrawn") {
            if (const auto target = earlier(places, entry.subject, i))
                forces.all[*target].withdrawn = true;
        } else if (const auto target = earlier(places, entry.supersedes, i);
                   target && sorted[*target]->kind == entry.kind &&
                   sorted[*target]->subject == entry.subject) {
            corrects[i] = true;
            forces.all[*target].superseded = true;
            if (!corrected[*target])
                corrected[*target] = i;
        }
    }
    for (std::size_t i = 0; i < sorted.size(); ++i) {
        if (forces.all[i].withdrawn || corrects[i] || sorted[i]->kind == "entry.withdrawn")
            continue;
        std::size_t last = i;
        while (corrected[last])
            last = *corrected[last];
        forces.effects.push_back({sorted[i], sorted[last]});
    }
    return forces;
}

} // namespace undercowl::journal
