// What speaks against a machine leaving, before it is handed over.
#pragma once

#include "core/job/message.h"
#include "core/job/model.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::job {

// Stops: the machine does not leave before it is settled or, where that is possible, the owner's refusal or
// the reason for leaving it out is recorded. Tells: it stays in the shop, unless it is fetched as it is and
// the hand-over says in words what the owner was told. Asks: it may leave when the mechanic says so a second
// time, with it named. Warns: it may leave, and the owner's record says so.
enum class Weighs : std::uint8_t { Stops, Tells, Asks, Warns };

struct Against {
    Weighs weighs{};
    Message why;
    Id subject; // finding, step, part, round or span that it is about
    // What the mechanic may do about it here: record a refusal, say what was done afterwards, prove it, read
    // hoses, vents and cables back again, read the wires of the gathering back, measure at the step, fit the
    // part or say what became of it, or answer what did not work.
    enum class Way : std::uint8_t {
        None,
        SettleOrRefuse,
        SeeTo,
        Prove,
        ReadBack,
        ReadWires,
        Measure,
        Fit,
        Answer
    } way{};
    std::string what; // with SeeTo and Prove: the work, as RefitNeeds or ToProve names it
};

// What weighs most comes first, otherwise in the order of the job. What is not on again and bars riding does
// not leave without a word: an owner may fetch an unfinished machine, and the record then says that it must
// not be ridden. A reading beyond doubt outside its limit stops where it concerns safety, until it is
// measured again; where the owner refused the unsafe finding of the same thing it asks.
[[nodiscard]] std::vector<Against> againstLeaving(const Job& job);

[[nodiscard]] bool mayLeave(const Job& job); // nothing stops it

// What was left of a machine that is handed over, as it is called: parts, what is apart and bars riding, what
// is unsafe, what does not work.
[[nodiscard]] std::vector<std::string> leftOpen(const Job& job);

[[nodiscard]] std::string_view code(Weighs weighs); // "stops", "tells", "asks", "warns"

} // namespace undercowl::job
