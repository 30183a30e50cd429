// Where in a job an entry belongs, in a mechanic's words.
#pragma once

#include "core/job/model.h"
#include "core/journal/entry.h"

#include <string>

namespace undercowl::store {

// "job 2026-031, strip step 'unplug the switch connector', photo"
[[nodiscard]] std::string placeInJob(const job::Job& job, const journal::Entry& entry);

} // namespace undercowl::store
