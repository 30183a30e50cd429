// Keeps the projection tables in step with the entries.
#pragma once

#include "core/store/jobrows.h"
#include "core/store/journaltable.h"

#include <optional>
#include <set>
#include <span>
#include <string>
#include <vector>

namespace undercowl::store {

// The stream with its entries and, when it is a job's alone, what they fold to.
struct StreamState {
    Id stream;
    std::vector<journal::Entry> entries; // in order of effect
    bool jobOnly{};
    JobState state;
};

// Everything here throws SQLite::Exception.
class Projector {
public:
    explicit Projector(Database& database) : database_(database) {}

    // The stream as it stands in the table of entries. The one used last is kept in memory, so that a job is
    // not read anew for each entry. The reference holds until the next call.
    [[nodiscard]] const StreamState& stream(const Id& id);

    // To be called when the tables may have changed in another way: by another process, by a rollback.
    void forget() { kept_.reset(); }

    // After the entries have been inserted: redoes the rows of their streams, and of the jobs that a machine
    // or an owner among them belongs to.
    void entriesAdded(std::span<const journal::Entry> entries);

    // Redoes every row of these streams from the entries, whatever stands in the tables.
    void redo(std::set<Id> streams);

    // The rows that the stream's entries give, and those in which the tables differ from them, in words.
    [[nodiscard]] std::vector<std::string> differences(const Id& stream);

private:
    [[nodiscard]] JobSurroundings surroundings(const job::Job& job);
    [[nodiscard]] StreamState read(const Id& id);
    void fold(StreamState& stream);
    // What 'before', whose entries move over, becomes with these.
    [[nodiscard]] StreamState withAdded(StreamState& before, const std::vector<const journal::Entry*>& added);
    void putAll(const StreamState& stream, MemorySink& rows);
    void write(const StreamState& stream);
    [[nodiscard]] std::set<Id> jobsOf(const Id& machineOrOwner);

    Database& database_;
    std::optional<StreamState> kept_; // its rows are in the tables
};

} // namespace undercowl::store
