// The shop's own measuring instruments: entries of kind "instrument.kept" in the shop's stream.
#pragma once

#include "core/journal/body.h"
#include "core/journal/entry.h"
#include "core/verdict/instrument.h"

#include <span>
#include <string_view>
#include <vector>

namespace undercowl::journal {

struct KeptInstrument {
    Id id;
    verdict::Instrument instrument;
    bool retired{}; // sold, broken, lost: not offered any more
};

// The whole of it; the last one of each instrument holds.
[[nodiscard]] Draft instrumentKept(const KeptInstrument& kept);

// Throws ShapeError (see body.h): a unit that is not known, an instrument that lacks range or error.
[[nodiscard]] KeptInstrument readInstrument(const Id& id, const Fields& body);

// Of the shop's stream, by name; the retired as well. Entries whose body does not fit are passed over.
[[nodiscard]] std::vector<KeptInstrument> foldInstruments(std::span<const Entry> entries);

// The shop's instrument of that name for the dimension, retired ones left out; null if there is none.
[[nodiscard]] const verdict::Instrument* instrumentNamed(std::span<const KeptInstrument> kept,
                                                         std::string_view name, units::Dimension dimension);

} // namespace undercowl::journal
