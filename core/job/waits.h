// What each machine in the shop waits for: the one list of all machines is grouped by it.
#pragma once

#include "core/job/message.h"
#include "core/job/model.h"

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace undercowl::job {

// In the order of the list: what a mechanic can act on comes first.
enum class Waits : std::uint8_t {
    Bench,    // for bench time: something can be done now
    Prove,    // all is on again; something that was disturbed is not proved yet
    HandOver, // ready: the owner can fetch it
    Owner,    // for the owner's answer
    Parts,
    Outside, // for anything else that a task was held for
    Nothing  // handed over
};

struct Waiting {
    Waits what{Waits::Bench};
    Message why; // what it is in particular; without a key when Standing::next says it

    friend bool operator==(const Waiting&, const Waiting&) = default;
};

// One answer for each job: a task that waits does not count while another one can go on. A task held without
// saying by what waits for parts when a part is to come, otherwise for something else.
[[nodiscard]] Waiting waitingFor(const Job& job);

// Unsafe or soon to be done, neither settled nor refused, and the owner said nothing of it: no approval names
// it, and none that names no findings at all came after it.
[[nodiscard]] std::vector<const Finding*> unanswered(const Job& job);

[[nodiscard]] std::string_view code(Waits waits); // "bench time", "proof", "hand over", "owner", ...
[[nodiscard]] std::optional<Waits> waitsFromCode(std::string_view text);

} // namespace undercowl::job
