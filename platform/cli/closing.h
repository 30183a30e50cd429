// A job as the commands "job ..." open it, and what is asked of it on the way out: rounds, proofs, cost.
#pragma once

#include "core/job/cost.h"
#include "platform/cli/command.h"
#include "platform/cli/job_json.h"

#include <tl/expected.hpp>

#include <string>

namespace undercowl::platform {

struct OpenedJob {
    store::Store store;
    job::Job job;
};

// By number or id; otherwise the exit code, after the complaint.
[[nodiscard]] tl::expected<OpenedJob, Exit> openJob(const Context& context, const std::string& wanted);

void sayProofs(const job::Job& job);
void sayCost(const job::Cost& cost);
[[nodiscard]] OrderedJson proofsJson(const job::Job& job);
[[nodiscard]] OrderedJson costJson(const job::Cost& cost);

[[nodiscard]] Exit showRounds(const Context& context, const std::string& wanted);
[[nodiscard]] Exit showProofs(const Context& context, const std::string& wanted);
[[nodiscard]] Exit showCost(const Context& context, const std::string& wanted);

} // namespace undercowl::platform
