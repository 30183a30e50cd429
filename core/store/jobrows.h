// The rows that one job, machine or owner has in the projection tables.
#pragma once

#include "core/job/model.h"
#include "core/store/rows.h"

#include <string>

namespace undercowl::store {

using job::Id;

// What a job's rows say of its machine and owner, whose streams are their own.
struct JobSurroundings {
    std::string machine; // "Marrowin Tern 125, 1987"; empty while the machine is not known
    std::string frameNumber;
    std::string owner;

    friend bool operator==(const JobSurroundings&, const JobSurroundings&) = default;
};

struct JobState {
    job::Job job;
    JobSurroundings around;
};

// "Marrowin Tern 125, 1987"
[[nodiscard]] std::string label(const job::Machine& machine);

// Puts the rows in which 'after' differs from 'before' and drops those that are gone. A job that has not been
// opened (its opening may not have arrived, or is withdrawn) has no rows. Starting from a default JobState
// gives all rows.
void putChanges(const JobState& before, const JobState& after, RowSink& sink);

void putMachine(const job::Machine& machine, RowSink& sink);
void putOwner(const job::Owner& owner, RowSink& sink);

} // namespace undercowl::store
