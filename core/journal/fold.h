// From entries to values. Pure: the same set of entries gives the same value, in whatever order and however
// often each entry is given.
#pragma once

#include "core/journal/entry.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace undercowl::journal {

// The stream's entries may come in any order and repeated. Entries of other streams are passed over. An entry
// whose body does not have the shape of its kind has no effect and is listed in Job::unreadable; so is one of
// an unknown kind.
[[nodiscard]] job::Job foldJob(const Id& job, std::span<const Entry> entries);

// The same for a job that one entry is added to, without reading the others again. Precondition: the entry is
// of the job's stream and comes after all that the job was folded from. Answers false, and leaves the job as
// it is, when the entry acts on another one (a correction, a withdrawal): then the job is to be folded anew.
[[nodiscard]] bool foldOnto(job::Job& job, const Entry& entry);

[[nodiscard]] job::Machine foldMachine(const Id& machine, std::span<const Entry> entries);
[[nodiscard]] job::Owner foldOwner(const Id& owner, std::span<const Entry> entries);
[[nodiscard]] std::vector<job::Mechanic>
foldMechanics(std::span<const Entry> entries); // stream shopStream, by name

// Why the entry's kind is unknown or its body does not fit it, naming the field; nothing when it fits.
[[nodiscard]] std::optional<std::string> shapeProblem(const Entry& entry);

// The media file that the entry names (photo or memo); empty if none.
[[nodiscard]] std::string mediaNamed(const Entry& entry);

// Which kind of stream an entry belongs to, from its kind: the projection to redo after it.
enum class StreamKind : std::uint8_t { Shop, Machine, Owner, Job, Unknown };
[[nodiscard]] StreamKind
streamKind(const Entry& entry); // Unknown for "entry.withdrawn", which occurs in any stream

} // namespace undercowl::journal
