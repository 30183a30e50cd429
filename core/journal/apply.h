// What each kind of entry does to a job: one small function for each, found by the kind's name.
#pragma once

#include "core/journal/body.h"
#include "core/journal/force.h"

#include <string_view>

namespace undercowl::journal {

// Reads the body first, and throws ShapeError before anything is changed. An entry about a subject that the
// job does not have changes nothing: the subject may have been withdrawn, or not arrived yet.
using ApplyToJob = void (*)(job::Job& job, const Fields& body, const InForce& entry);

// Null for a kind that is not one of a job's.
[[nodiscard]] ApplyToJob applyToJob(std::string_view kind);

[[nodiscard]] job::Machine readMachine(const Id& id, const Fields& body);
[[nodiscard]] job::Owner readOwner(const Id& id, const Fields& body);
[[nodiscard]] job::Mechanic readMechanic(const Id& id, const Fields& body);

} // namespace undercowl::journal
