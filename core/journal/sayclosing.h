// Drafts of what is said between the last bolt and the owner's hand. The same rules as say.h.
#pragma once

#include "core/journal/entry.h"

#include <optional>
#include <string>

namespace undercowl::journal {

// 'note' says how; it must not be empty when it is left out.
[[nodiscard]] Draft proofGiven(const Id& job, const job::Proof& proof);
[[nodiscard]] Draft secondEyesGiven(const Id& job, const job::SecondEyes& eyes); // 'by' must not be empty
[[nodiscard]] Draft functionProved(const Id& job, const job::FunctionCheck& check);
[[nodiscard]] Draft roadTested(const Id& job, const job::RoadTest& test, const Id& supersedes = {});
[[nodiscard]] Draft recheckSeen(const Id& job, const Id& recheck, const std::string& note = {});
[[nodiscard]] Draft costSettled(const Id& job, const job::CostTerms& terms);     // the last one holds
[[nodiscard]] Draft ownerSigned(const Id& job, const job::Signature& signature); // the last one holds

} // namespace undercowl::journal
