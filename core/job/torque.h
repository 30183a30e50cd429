// The torques that a step demands, and whether readings of it show them.
#pragma once

#include "core/job/model.h"
#include "core/units/quantity.h"
#include "core/verdict/target.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::job {

// The torque of the hardware; nothing where it has none, or one that is no torque above zero.
[[nodiscard]] std::optional<units::Quantity> torqueOf(const Hardware& piece);

// What names it among the others of its step: "bolt M8", and its length where another one is called the same.
[[nodiscard]] std::string torqueName(const StripStep& step, const Hardware& piece);

// The hardware whose torque is meant by the words of a reading: the one that they name, or the only one of
// the step that has a torque. Null where that is not clear. Owned by the step.
[[nodiscard]] const Hardware* torqueMeant(const StripStep& step, std::string_view what);

// What a reading of it is held against where no other limits were given. The hardware has a torque.
[[nodiscard]] verdict::TargetLimits torqueLimits(const Hardware& piece);

// Whether the limits of the reading are those of the step's own torque, and were not given by the mechanic.
[[nodiscard]] bool heldAgainstStep(const Job& job, const Reading& reading);

struct TorqueSeen {
    const Hardware* piece{}; // owned by the step
    // Inside: the last reading was judged inside limits that hold the torque. Outside: it was judged outside,
    // or, without limits, is plainly off. Unread: neither; a reading that could not be judged shows nothing.
    enum class State : std::uint8_t { Unread, Inside, Outside } state{};
    const Reading* reading{}; // that says so; null for Unread
};

// One for each hardware with a torque, in the order of the step. Of readings with the same words the last
// counts. One reading stands for all pieces of a line ("4 x bolt M8"); each line needs its own.
[[nodiscard]] std::vector<TorqueSeen> torquesSeen(const Job& job, const StripStep& step);

} // namespace undercowl::job
