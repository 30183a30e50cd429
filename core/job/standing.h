// Where a job stopped and what is next.
#pragma once

#include "core/job/message.h"
#include "core/job/model.h"

#include <cstdint>
#include <optional>
#include <string_view>

namespace undercowl::job {

// The moment of the job that its next action belongs to.
enum class Moment : std::uint8_t { TakeIn, LookOver, Strip, Wait, Refit, Prove, HandOver, Done };

struct Standing {
    Moment moment{};
    Message stopped; // "stopped after: unplug 6-place connector"
    Message next;    // "refit next: handlebar clamp, 2 screws from bag 7"
    Id stepId;       // strip step that 'next' speaks of; empty if none
    TimeMs lastAt{}; // when the job was last worked on
};

[[nodiscard]] Standing standing(const Job& job);

[[nodiscard]] std::string_view code(Moment moment); // "take in" ... "done"
[[nodiscard]] std::optional<Moment> momentFromCode(std::string_view text);

} // namespace undercowl::job
