// A new part with other connections in place of the old one: which wire goes where follows from what each
// serves, never from its colour.
//
// The rules of trying are common practice, no source; the machine's manual and licensed practice come first.
#pragma once

#include "core/wiring/map.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::wiring {

// What shows that a wire is at its terminal.
enum class Sign : std::uint8_t {
    Lights,  // a lamp or a signal
    Sounds,  // the horn
    Works,   // whatever else it serves
    Leads,   // nothing is connected: what it leads to is measured
    Carries, // nothing is connected: battery voltage is measured, ignition off and on
    Earth    // nothing is connected: close to no resistance to the frame
};

// A wire of the old gathering's loom half goes to this place of the new part.
struct Carried {
    PlaceKey wire;
    PlaceKey place;
    std::string by; // "54" or "stop lamp": what both serve

    friend bool operator==(const Carried&, const Carried&) = default;
};

// A wire whose place is to be found out. With a sign that is measured nothing is connected, and 'at' names
// the places that it may turn out to belong to.
struct Trial {
    PlaceKey wire;
    std::vector<PlaceKey> at; // one after the other, until the sign is seen
    Sign sign{};
    std::string serves{}; // "54" or "stop lamp"; empty if unknown

    [[nodiscard]] bool measured() const { return sign >= Sign::Leads; }
    friend bool operator==(const Trial&, const Trial&) = default;
};

struct CarryOver {
    std::vector<Carried> carried;
    std::vector<PlaceKey> leaveEmpty;   // of the new part: nothing of the old wiring serves it
    std::vector<PlaceKey> withoutPlace; // wires that the new part has no place for: to be insulated
    std::vector<Trial> trials;          // what is measured first, then those with the fewest places to try
    std::size_t mostTrials{};           // connections, if each sign comes at the last place only
};

// 'old': wires in its loom half. 'fresh': the new part, with what is known of what its places serve in either
// half. Two wires of one function, or two places, are not told apart by it: they are tried. A live feed,
// ignition, charging and starter wires, and wires of unknown function are never tried, only measured.
[[nodiscard]] CarryOver carryOver(const Gathering& old, const Gathering& fresh);

[[nodiscard]] std::string_view code(Sign sign); // "lights", "sounds", "works", "leads", "carries", "earth"

} // namespace undercowl::wiring
