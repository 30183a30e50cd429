// What the owner complained of, and what did not work when the machine came: each has its answer before the
// machine leaves.
#pragma once

#include "core/job/model.h"

#include <string>
#include <vector>

namespace undercowl::job {

struct Complaint {
    std::string what; // as typed, or the function's name; 'function.proved' answers it under this name
    bool owners{};    // in the owner's words at taking in; otherwise a function that was tried then
    const FunctionCheck* answer{}; // what was said of it since; owned by the job, null: nothing
    // Nobody tried it again, or it was left without a word why.
    [[nodiscard]] bool open() const {
        return answer == nullptr || (answer->answer == FunctionAnswer::NotTried && answer->note.empty());
    }
};

// The owner's words first: why it is here and what does not work, then functions in the order of trying.
[[nodiscard]] std::vector<Complaint> complaints(const Job& job);

} // namespace undercowl::job
