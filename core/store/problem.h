// What can go wrong in the store, in kinds that let a user act.
#pragma once

#include <cstdint>
#include <string>

namespace undercowl::store {

enum class Fault : std::uint8_t {
    CannotOpen, // no such folder, no permission, locked by another program
    Damaged,    // integrity check or hash chain failed
    TooNew,     // written by a newer version: opened read-only at most
    DiskFull,
    InputOutput, // the system refused to read, write or sync
    Refused,     // what was given does not fit: an unknown subject, a malformed entry, a hostile archive
    NotFound,
};

struct Problem {
    Fault fault{};
    std::string message; // English, names the field or file and the remedy
};

// Whether a store that cannot be opened for this can perhaps be read all the same: Store::openReadable().
[[nodiscard]] constexpr bool mayBeLookedAt(Fault fault) {
    return fault == Fault::Damaged || fault == Fault::TooNew || fault == Fault::DiskFull;
}

} // namespace undercowl::store
