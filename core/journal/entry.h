// One entry of the journal, and how it is sealed.
//
// Entries are only ever added. A correction is an entry that supersedes another; a withdrawal is an entry of
// kind "entry.withdrawn". Each device chains its own entries: an entry's hash covers the one before it, and
// covers the body through the body's hash, so that a redacted body leaves the chain verifiable.
#pragma once

#include "core/job/model.h"

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace undercowl::journal {

using job::Id;
using job::TimeMs;

// Hybrid logical clock: wall time, and a counter that keeps entries of the same millisecond, or of a clock
// that was set back, in the order of their causes.
struct Clock {
    TimeMs wallMs{};
    std::uint32_t counter{};

    friend auto operator<=>(const Clock&, const Clock&) = default; // NOLINT(modernize-use-nullptr)
};

// The clock of a new entry, given the newest one seen so far and the wall time. Always greater than 'newest'.
[[nodiscard]] Clock tick(const Clock& newest, TimeMs wallMs);

// What is to be said, before it is sealed.
struct Draft {
    std::string kind; // "step.stripped"; docs/journal.md lists kinds and bodies
    Id stream;        // the job, machine or owner that it belongs to; shopStream for the shop's own
    Id subject;       // what it is about: the step, finding ...
    std::string body; // JSON object, UTF-8
    Id supersedes;    // entry that this one corrects; empty if none
};

inline constexpr std::string_view shopStream = "shop";

struct Entry {
    Id id;
    Id device;
    std::uint64_t number{}; // running number of the device, from 1
    Clock clock;
    std::string kind;
    Id stream;
    Id subject;
    Id mechanic;
    Id supersedes;
    std::string body; // exactly the bytes that were hashed; empty when redacted
    bool redacted{};
    std::string salt;     // 32 hex digits; makes the hash of a short body unguessable once it is redacted
    std::string bodyHash; // BLAKE2b-256 of salt and body, 64 hex digits
    std::string previous; // hash of the device's entry before; empty for number 1
    std::string hash;     // BLAKE2b-256 of all fields above but body and redacted

    friend bool operator==(const Entry&, const Entry&) = default;
};

// The order in which entries take effect: by clock, then device, then number. Total over different entries.
[[nodiscard]] bool before(const Entry& a, const Entry& b);

// Fills salt, bodyHash and hash. Preconditions: all other fields are set.
void seal(Entry& entry);

// Why the entry's hashes do not fit its content; nothing when they do. Does not look at the chain.
[[nodiscard]] std::optional<std::string> sealProblem(const Entry& entry);

// Drops the body. The hashes stay, and sealProblem() stays silent.
void redact(Entry& entry);

// A new UUIDv7 (RFC 9562) of the given time; ids made one after the other in the same process sort in that
// order.
[[nodiscard]] Id newId(TimeMs now);

} // namespace undercowl::journal
