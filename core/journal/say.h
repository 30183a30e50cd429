// Drafts of entries from the job's own values: the one place where bodies are written. fold.h reads them
// back.
//
// Each takes the value as it is to be after the entry; fields 'said', 'order' and what other entries say (a
// step's 'refitted', a finding's 'settled') are not written. Pass the value's said.entry as 'supersedes' to
// correct it.
#pragma once

#include "core/journal/entry.h"

#include <optional>
#include <string>

namespace undercowl::journal {

// Streams of their own.
[[nodiscard]] Draft mechanicNamed(const job::Mechanic& mechanic);
[[nodiscard]] Draft machineDescribed(const job::Machine& machine); // the whole of it; the last one holds
[[nodiscard]] Draft ownerDescribed(const job::Owner& owner);       // the whole of it; the last one holds

// Stream of the job. jobOpened starts it; jobDescribed sets only the fields that are given, the last one
// holds for each.
struct JobPatch {
    std::optional<std::string> number, reason, works, worksNot, load, received;
    std::optional<Id> machine, owner, cameBackFrom;
    std::optional<job::TypedValue> odometer, altitude, riderMass, luggageMass;
};
[[nodiscard]] Draft jobOpened(const Id& job, const JobPatch& first);
[[nodiscard]] Draft jobDescribed(const Id& job, const JobPatch& patch);

[[nodiscard]] Draft photoTaken(const Id& job, const job::Photo& photo, const Id& supersedes = {});
[[nodiscard]] Draft findingNoted(const Id& job, const job::Finding& finding, const Id& supersedes = {});
[[nodiscard]] Draft findingSettled(const Id& job, const Id& finding, const std::string& how);
[[nodiscard]] Draft taskNamed(const Id& job, const job::Task& task, const Id& supersedes = {});
[[nodiscard]] Draft taskHeld(const Id& job, const Id& task, const std::string& waitingFor,
                             job::Holds heldBy = job::Holds::NotSaid);
[[nodiscard]] Draft taskResumed(const Id& job, const Id& task);
[[nodiscard]] Draft stepStripped(const Id& job, const job::StripStep& step, const Id& supersedes = {});
[[nodiscard]] Draft stepRefitted(const Id& job, const Id& step, const std::string& note = {});
// A hose, vent or cable read back; the last one holds.
[[nodiscard]] Draft lineChecked(const Id& job, const Id& step, job::MatchOutcome outcome,
                                const std::string& note = {});

// Of the gathering only what describes it is written, not its places.
[[nodiscard]] Draft gatheringDescribed(const Id& job, const wiring::Gathering& gathering,
                                       const Id& supersedes = {});
[[nodiscard]] Draft wireAnswered(const Id& job, const Id& gathering, wiring::PlaceKey place,
                                 wiring::Answer which, const wiring::PlaceAnswer& answer);
// Nothing is in the place, under that answer: takes back what earlier answers said.
// SEEN: somebody looked and no wire is there; otherwise what was answered is only taken back.
[[nodiscard]] Draft placeEmpty(const Id& job, const Id& gathering, wiring::PlaceKey place,
                               wiring::Answer which, bool seen = false);
[[nodiscard]] Draft wireTagged(const Id& job, const Id& gathering, wiring::PlaceKey place,
                               const std::string& tag);
[[nodiscard]] Draft wireChecked(const Id& job, const job::WireCheck& check);

[[nodiscard]] Draft partStated(const Id& job, const job::Part& part); // the last one of each part holds
[[nodiscard]] Draft readingTaken(const Id& job, const job::Reading& reading, const Id& supersedes = {});
[[nodiscard]] Draft memoKept(const Id& job, const job::Memo& memo, const Id& supersedes = {});
[[nodiscard]] Draft recheckDue(const Id& job, const job::Recheck& recheck, const Id& supersedes = {});
[[nodiscard]] Draft jobHandedOver(const Id& job, const std::string& note, const std::string& oldParts = {},
                                  const std::string& waste = {});

// Undo, in any stream: the entry named has no effect any more. Withdrawing the withdrawal brings it back.
[[nodiscard]] Draft withdrawn(const Id& stream, const Id& entry);

} // namespace undercowl::journal
