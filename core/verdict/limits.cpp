#include "core/verdict/limits.h"

#include <algorithm>

namespace undercowl::verdict {

std::string_view englishName(Trust trust) {
    switch (trust) {
    case Trust::Manual: return "manual";
    case Trust::ShopRecord: return "shop record";
    case Trust::Standard: return "standard";
    case Trust::WorkedOutHere: break;
    }
    return "worked out here";
}

std::string LimitSource::text() const {
    std::string result{englishName(trust)};
    if (!reference.empty())
        result.append(", ").append(reference);
    return result;
}

const Limits* mostTrusted(std::span<const Limits> limits) {
    const auto best = std::min_element(limits.begin(), limits.end(), [](const Limits& a, const Limits& b) {
        return a.source.trust < b.source.trust;
    });
    return best == limits.end() ? nullptr : &*best;
}

} // namespace undercowl::verdict
