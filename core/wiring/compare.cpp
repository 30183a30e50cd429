#include "core/wiring/compare.h"

#include <algorithm>
#include <array>
#include <set>

namespace undercowl::wiring {
namespace {

bool alike(const Wire& a, const Wire& b) {
    const bool terminalsKnown =
        a.terminal.kind != TerminalKind::Unknown && b.terminal.kind != TerminalKind::Unknown;
    return a.colour == b.colour && (!terminalsKnown || a.terminal == b.terminal);
}

const Wire* wireAt(const Gathering& gathering, PlaceKey key, Answer which) {
    const Place* place = gathering.find(key);
    return place != nullptr && place->answer(which) ? &place->answer(which)->wire : nullptr;
}

} // namespace

std::vector<Difference> compare(const Gathering& gathering, Half half, Answer before, Answer after) {
    std::vector<Difference> differences;
    std::set<PlaceKey> settled;
    // A swap explains two places at once, so it is looked for before either is called different.
    for (const Place& a : gathering.held) {
        const Wire* aBefore = wireAt(gathering, a.key, before);
        const Wire* aAfter = wireAt(gathering, a.key, after);
        if (a.key.half != half || !aBefore || !aAfter || alike(*aBefore, *aAfter) || settled.contains(a.key))
            continue;
        for (const Place& b : gathering.held) {
            if (b.key.half != half || !(a.key < b.key) || settled.contains(b.key))
                continue;
            const Wire* bBefore = wireAt(gathering, b.key, before);
            const Wire* bAfter = wireAt(gathering, b.key, after);
            if (bBefore && bAfter && alike(*aBefore, *bAfter) && alike(*bBefore, *aAfter)) {
                differences.push_back({DifferenceKind::Swapped, {a.key, b.key}});
                settled.insert({a.key, b.key});
                break;
            }
        }
    }
    for (const Place& place : gathering.held) {
        if (place.key.half != half || settled.contains(place.key))
            continue;
        const Wire* was = wireAt(gathering, place.key, before);
        const Wire* is = wireAt(gathering, place.key, after);
        if (was && !is)
            differences.push_back({DifferenceKind::Missing, {place.key}});
        else if (!was && is)
            differences.push_back({DifferenceKind::Extra, {place.key}});
        else if (was && is && !alike(*was, *is))
            differences.push_back({DifferenceKind::Different, {place.key}});
    }
    std::sort(differences.begin(), differences.end(),
              [](const Difference& a, const Difference& b) { return a.places.front() < b.places.front(); });
    return differences;
}

std::string_view code(DifferenceKind kind) {
    constexpr std::array<std::string_view, 4> codes{"swapped", "missing", "extra", "different"};
    return codes.at(static_cast<std::size_t>(kind));
}

} // namespace undercowl::wiring
