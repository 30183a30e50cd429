// What of a job, a machine or an owner can be found by its words.
#pragma once

#include "core/store/jobrows.h"

namespace undercowl::store {

// Puts and drops the lines in which 'after' differs from 'before'; both may be default values.
void putSearchChanges(const Id& stream, const JobState& before, const JobState& after, RowSink& sink);

void putMachineSearch(const job::Machine& machine, RowSink& sink);
void putOwnerSearch(const job::Owner& owner, RowSink& sink);

} // namespace undercowl::store
