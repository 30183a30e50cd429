// Which entries are in force: what corrections and withdrawals leave of a set of entries.
#pragma once

#include "core/journal/entry.h"

#include <span>
#include <vector>

namespace undercowl::journal {

// An entry that takes effect. It stands where its first version stood, and says what its last version says.
struct InForce {
    const Entry* first{}; // gives the position and the time
    const Entry* last{};  // gives the body and the mechanic; the same entry when nothing superseded it
};

struct Sorted {
    const Entry* entry{};
    bool withdrawn{};
    bool superseded{};
};

struct Forces {
    std::vector<InForce> effects; // in order of effect
    std::vector<Sorted> all;      // every different entry of the stream, in order
};

// Entries of other streams are passed over; repeated ones count once. A withdrawal or correction only acts on
// an entry that comes before it in the order, so that circles have no effect; where two corrections meet, the
// later one holds. The pointers are into 'entries'.
[[nodiscard]] Forces inForce(std::string_view stream, std::span<const Entry> entries);

} // namespace undercowl::journal
