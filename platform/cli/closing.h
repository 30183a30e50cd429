// A job as the commands "job ..." open it, and what is asked of it on the way out: rounds, proofs, cost. What
// is said of them stands in sayproof.h, saycheck.h and saycost.h.
#pragma once

#include "core/job/cost.h"
#include "platform/cli/command.h"
#include "platform/cli/job_json.h"

#include <tl/expected.hpp>

#include <string>
#include <string_view>
#include <vector>

namespace undercowl::platform {

struct OpenedJob {
    store::Store store;
    job::Job job;
};

// By number or id; otherwise the exit code, after the complaint.
[[nodiscard]] tl::expected<OpenedJob, Exit> openJob(const Context& context, const std::string& wanted);

// Appends what was said, as the mechanic of this device or, where nobody works on it yet, as 'by'. The exit
// code follows after the complaint.
[[nodiscard]] tl::expected<void, Exit> append(OpenedJob& opened, const std::vector<journal::Draft>& drafts,
                                              const std::string& by);

// The one of the texts that is meant by a number, counted from 1, or by words that stand in no other.
// Otherwise the exit code, after a complaint that lists what there is.
[[nodiscard]] tl::expected<std::size_t, Exit> oneOf(const std::vector<std::string>& texts,
                                                    const std::string& wanted, std::string_view kind);

void sayProofs(const job::Job& job);
void sayCost(const job::Cost& cost);
[[nodiscard]] OrderedJson proofsJson(const job::Job& job);
[[nodiscard]] OrderedJson costJson(const job::Cost& cost);

[[nodiscard]] Exit showRounds(const Context& context, const std::string& wanted);
[[nodiscard]] Exit showProofs(const Context& context, const std::string& wanted);
[[nodiscard]] Exit showCost(const Context& context, const std::string& wanted);

} // namespace undercowl::platform
