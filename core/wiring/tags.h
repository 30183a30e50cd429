// Tags that make every wire of a connector distinguishable for one person, as few as possible.
#pragma once

#include "core/colour/vision.h"
#include "core/wiring/map.h"

#include <string>
#include <utility>
#include <vector>

namespace undercowl::wiring {

// Whether two wires look alike to that person. The same colours always do. Others do when both bases and both
// tracers are closer than 11 in CIEDE2000 as that person sees them: as far as one colour varies from maker to
// maker (common practice, no source). A tracer that cannot be told from its base is not seen. Without a
// deficiency only the same colours look alike.
[[nodiscard]] bool looksAlike(const colour::WireColour& one, const colour::WireColour& other,
                              const colour::Vision& vision);

struct TagPlan {
    std::vector<const Place*> toTag; // yet without a tag; in order of place, owned by the gathering
    // Wires of different colours that look alike to that person, and nothing else tells apart.
    std::vector<std::pair<const Place*, const Place*>> alike;
};

// The fewest wires of the half that must be tagged so that any two differ by their look, their known
// terminals or their tags, by the 'as found' answers. Tags that are there already count.
[[nodiscard]] TagPlan fewestTags(const Gathering& gathering, Half half, const colour::Vision& vision);

// English: "places 2 and 5 look alike to you: green and brown; tag place 5"; empty when there is nothing to
// say.
[[nodiscard]] std::string englishAdvice(const TagPlan& plan);

} // namespace undercowl::wiring
