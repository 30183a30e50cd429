// Wires that look alike in one connector, named before the disconnect.
#pragma once

#include "core/wiring/map.h"

#include <string>
#include <vector>

namespace undercowl::wiring {

struct TwinGroup {
    colour::WireColour colour;
    Half half{};
    std::vector<const Place*> places; // two or more, owned by the gathering
    bool apartByTerminal{};           // every member has a known terminal, unlike each of the others'
    bool apartByTag{};                // every member but at most one carries a tag, and the tags differ

    [[nodiscard]] bool settled() const { return apartByTerminal || apartByTag; }
};

// Groups of the given half with equal base and tracer, by the 'as found' answers, in order of their first
// place.
[[nodiscard]] std::vector<TwinGroup> twins(const Gathering& gathering, Half half);

// English: "two grey with red tracer: places 2 and 5: tag them, or tell them apart by terminal: blade 6.3 and
// bullet".
[[nodiscard]] std::string englishAdvice(const TwinGroup& group);

} // namespace undercowl::wiring
