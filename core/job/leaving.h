// What speaks against a machine leaving, before it is handed over.
#pragma once

#include "core/job/message.h"
#include "core/job/model.h"

#include <vector>

namespace undercowl::job {

// Stops: the machine does not leave before it is settled or, where that is possible, the owner's refusal or
// the reason for leaving it out is recorded. Warns: it may leave, and the owner's record says so.
enum class Weighs : std::uint8_t { Stops, Warns };

struct Against {
    Weighs weighs{};
    Message why;
    Id subject; // finding, step, round or span that it is about
    // What the mechanic may do about it here: record a refusal, say what was done afterwards, prove it, read
    // hoses, vents and cables back again, read the wires of the gathering back, or measure at the step.
    enum class Way : std::uint8_t { None, SettleOrRefuse, SeeTo, Prove, ReadBack, ReadWires, Measure } way{};
    std::string what; // with SeeTo and Prove: the work, as RefitNeeds or ToProve names it
};

// What stops comes first, both in the order of the job. A part that is not on again stops nothing: an owner
// may fetch an unfinished machine, and the record then says that it must not be ridden.
[[nodiscard]] std::vector<Against> againstLeaving(const Job& job);

[[nodiscard]] bool mayLeave(const Job& job);

} // namespace undercowl::job
