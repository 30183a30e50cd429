// Where in a job an entry belongs, in a mechanic's words.
#pragma once

#include "core/job/model.h"
#include "core/journal/entry.h"

#include <string>

namespace undercowl::store {

// "job 2026-031, strip step 'unplug the switch connector', photo". 'otherwise': what the entry is about where
// the job does not know it, which it cannot when the entry itself is damaged: "strip step 'rear wheel'", or
// empty.
[[nodiscard]] std::string placeInJob(const job::Job& job, const journal::Entry& entry,
                                     const std::string& otherwise = {});

} // namespace undercowl::store
