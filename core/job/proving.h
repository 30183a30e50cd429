// What must be proved before the machine leaves: it follows from what the job disturbed. Common practice, no
// source; the machine's manual, local law and licensed practice come first.
#pragma once

#include "core/job/message.h"
#include "core/job/model.h"

#include <string>
#include <string_view>
#include <vector>

namespace undercowl::job {

enum class ProofKind : std::uint8_t {
    Afterwards, // adjusting, bleeding, trying: core/job/needs.h names it, 'refit.seen-to' answers it
    Torque,     // fasteners with a torque: readings inside it at the step prove them (core/job/torque.h)
    Wires,      // of a gathering: read back wire by wire proves them
    Hose,
    Cable,
    Fluid,
    Fasteners,
    Sits // nothing of all that: it is looked at
};

struct ToProve {
    ProofKind kind{};
    Id subject; // step or gathering
    std::string title;
    Message words;     // "tightened: 2 x M5, 4.5 N.m"
    std::string what;  // names it in entries; for Afterwards the words of RefitNeeds
    bool secondEyes{}; // brakes, wheels, steering: another pair of eyes can sign
    bool apart{};      // the step is not refitted yet: nothing can be proved
    enum class State : std::uint8_t { Open, Proved, LeftOut } state{};
    std::string note;       // how, or why it was left out
    std::string secondedBy; // empty: nobody
    // What was seen that contradicts it. While there is any it is not proved, whatever was said; it can only
    // be left out for a reason.
    std::vector<Message> against;
    bool needsHow{}; // it can be said proved only with words on how: a torque that was not read
};

// All of 'against' in one line, English; empty where there is none.
[[nodiscard]] std::string againstText(const ToProve& proof);

// In the order of stripping, then the gatherings that no step names. Every step of the job yields at least
// one.
[[nodiscard]] std::vector<ToProve> toProve(const Job& job);

// Of those that can be proved now: neither proved nor left out, and not apart.
[[nodiscard]] std::vector<ToProve> openProofs(const Job& job);

// When the recheck is due, counted from the hand-over, before it from the day on which it was noted. Nothing
// when it is due by distance alone, or was seen to.
[[nodiscard]] std::optional<TimeMs> dueAt(const Job& job, const Recheck& recheck);

[[nodiscard]] std::string_view code(ProofKind kind); // "afterwards", "torque", "wires" ...

} // namespace undercowl::job
