// Drafts of what goes with the work beside stripping: approvals, rounds, time, consumables, what a refit
// needs. The same rules as say.h.
#pragma once

#include "core/journal/entry.h"

#include <optional>
#include <string>
#include <vector>

namespace undercowl::journal {

// The owner does not want the finding put right. 'by' must not be empty.
[[nodiscard]] Draft findingRefused(const Id& job, const Id& finding, const job::Refusal& refusal);
[[nodiscard]] Draft approvalAsked(const Id& job, const job::Approval& approval, const Id& supersedes = {});

[[nodiscard]] Draft roundBegun(const Id& job, const job::Round& round); // its checks without answers
[[nodiscard]] Draft checkAnswered(const Id& job, const Id& round, const std::string& check,
                                  job::CheckAnswer answer, const std::string& note = {},
                                  const Id& finding = {});
[[nodiscard]] Draft functionChecked(const Id& job, const job::FunctionCheck& check);

[[nodiscard]] Draft timeStarted(const Id& job, const Id& span, const Id& task);
// Stops the watch; said again with minutes it corrects them.
[[nodiscard]] Draft timeStopped(const Id& job, const Id& span, std::optional<int> minutes = {});

[[nodiscard]] Draft consumableUsed(const Id& job, const job::ConsumableUse& use);

[[nodiscard]] Draft taskFinished(const Id& job, const Id& task);

[[nodiscard]] Draft refitNeeds(const Id& job, const Id& step, const job::RefitNeeds& needs);
// 'note' says how; it must not be empty when it is left out.
[[nodiscard]] Draft refitSeenTo(const Id& job, const Id& step, const std::string& what, bool leftOut = false,
                                const std::string& note = {});
[[nodiscard]] Draft refitWished(const Id& job, const std::vector<Id>& steps); // the last one holds

} // namespace undercowl::journal
