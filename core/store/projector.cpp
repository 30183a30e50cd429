#include "core/store/projector.h"

#include "core/journal/fold.h"
#include "core/store/searchrows.h"

#include <algorithm>
#include <map>

namespace undercowl::store {
namespace {

using journal::Entry;
using journal::StreamKind;

std::set<StreamKind> kindsOf(std::span<const Entry> entries) {
    std::set<StreamKind> kinds;
    for (const Entry& entry : entries) {
        kinds.insert(streamKind(entry));
    }
    return kinds;
}

void putMechanics(const Id& stream, std::span<const Entry> entries, RowSink& sink) {
    for (const job::Mechanic& mechanic : journal::foldMechanics(entries)) {
        sink.put(TableId::Mechanic, {stream, mechanic.id, mechanic.name});
    }
}

void insertSorted(std::vector<Entry>& into, const Entry& entry) {
    into.insert(std::upper_bound(into.begin(), into.end(), entry, journal::before), entry);
}

std::string shown(const Row& key) {
    std::string text;
    for (const Cell& cell : key) {
        text += text.empty() ? "" : " ";
        if (const auto* name = std::get_if<std::string>(&cell)) {
            text += *name;
        } else if (const auto* number = std::get_if<std::int64_t>(&cell)) {
            text += std::to_string(*number);
        }
    }
    return text;
}

} // namespace

JobSurroundings Projector::surroundings(const job::Job& job) {
    JobSurroundings around;
    Using machine(database_.prepared("SELECT make, model, year, frame_number FROM machine WHERE stream = ?"));
    machine->bind(1, job.machine);
    if (machine->executeStep()) {
        job::Machine found;
        found.make = machine->getColumn(0).getString();
        found.model = machine->getColumn(1).getString();
        if (!machine->getColumn(2).isNull()) {
            found.year = machine->getColumn(2).getInt();
        }
        around.machine = label(found);
        around.frameNumber = machine->getColumn(3).getString();
    }
    Using owner(database_.prepared("SELECT name FROM owner WHERE stream = ?"));
    owner->bind(1, job.owner);
    if (owner->executeStep()) {
        around.owner = owner->getColumn(0).getString();
    }
    return around;
}

void Projector::fold(StreamState& stream) {
    const auto kinds = kindsOf(stream.entries);
    stream.jobOnly = kinds.contains(StreamKind::Job) && !kinds.contains(StreamKind::Machine) &&
                     !kinds.contains(StreamKind::Owner) && !kinds.contains(StreamKind::Shop);
    if (kinds.contains(StreamKind::Job)) {
        stream.state.job = journal::foldJob(stream.stream, stream.entries);
        stream.state.around = surroundings(stream.state.job);
    }
}

StreamState Projector::read(const Id& id) {
    StreamState stream;
    stream.stream = id;
    stream.entries = entriesOf(database_, id);
    fold(stream);
    return stream;
}

const StreamState& Projector::stream(const Id& id) {
    if (!kept_ || kept_->stream != id) {
        kept_ = read(id);
    }
    return *kept_;
}

void Projector::putAll(const StreamState& stream, MemorySink& rows) {
    const auto kinds = kindsOf(stream.entries);
    if (kinds.contains(StreamKind::Shop)) {
        putMechanics(stream.stream, stream.entries, rows);
    }
    if (kinds.contains(StreamKind::Machine)) {
        const auto machine = journal::foldMachine(stream.stream, stream.entries);
        putMachine(machine, rows);
        putMachineSearch(machine, rows);
    }
    if (kinds.contains(StreamKind::Owner)) {
        const auto owner = journal::foldOwner(stream.stream, stream.entries);
        putOwner(owner, rows);
        putOwnerSearch(owner, rows);
    }
    if (kinds.contains(StreamKind::Job)) {
        putChanges({}, stream.state, rows);
    }
}

// Compares with what stands in the tables, so that it also mends what is wrong there.
void Projector::write(const StreamState& stream) {
    MemorySink wanted;
    putAll(stream, wanted);
    TableSink sink(database_);
    for (std::size_t i = 0; i < tables().size(); ++i) {
        const auto id = static_cast<TableId>(i);
        const RowsByKey present = readRows(database_, id, stream.stream);
        const RowsByKey& rows = wanted.rows().at(i);
        for (const auto& [key, row] : present) {
            if (!rows.contains(key)) {
                sink.drop(id, key);
            }
        }
        for (const auto& [key, row] : rows) {
            const auto found = present.find(key);
            if (found == present.end() || found->second != row) {
                sink.put(id, row);
            }
        }
    }
}

std::set<Id> Projector::jobsOf(const Id& machineOrOwner) {
    std::set<Id> jobs;
    for (const std::string_view column : {"machine", "owner"}) {
        Using statement(
            database_.prepared("SELECT stream FROM job_line WHERE " + std::string(column) + " = ?"));
        statement->bind(1, machineOrOwner);
        while (statement->executeStep()) {
            jobs.insert(statement->getColumn(0).getString());
        }
    }
    return jobs;
}

StreamState Projector::withAdded(StreamState& before, const std::vector<const Entry*>& added) {
    StreamState after;
    after.stream = before.stream;
    after.jobOnly = before.jobOnly;
    after.state.job = before.state.job;
    after.entries = std::move(before.entries);
    bool anew = false;
    for (const Entry* entry : added) {
        const StreamKind kind = streamKind(*entry);
        anew = anew || (kind != StreamKind::Job && kind != StreamKind::Unknown) || after.entries.empty() ||
               !journal::before(after.entries.back(), *entry) || !journal::foldOnto(after.state.job, *entry);
        insertSorted(after.entries, *entry);
    }
    if (anew) {
        fold(after);
    } else {
        after.state.around = surroundings(after.state.job);
    }
    return after;
}

void Projector::entriesAdded(std::span<const Entry> entries) {
    std::map<Id, std::vector<const Entry*>> byStream;
    for (const Entry& entry : entries) {
        byStream[entry.stream].push_back(&entry);
    }
    std::set<Id> whole;
    for (const auto& [id, added] : byStream) {
        if (!kept_ || kept_->stream != id || !kept_->jobOnly) {
            whole.insert(id);
        }
    }
    if (byStream.size() == whole.size()) {
        redo(std::move(whole));
        return;
    }
    // The quick way for the job at hand: only what the new entries change is compared and written.
    std::optional<StreamState> at = std::move(kept_);
    kept_.reset();
    redo(std::move(whole));
    StreamState after = withAdded(*at, byStream.at(at->stream));
    if (after.jobOnly) {
        TableSink sink(database_);
        putChanges(at->state, after.state, sink);
    } else {
        write(after);
    }
    kept_ = std::move(after);
}

void Projector::redo(std::set<Id> streams) {
    // Machines and owners first: the lines of jobs show them.
    std::set<Id> jobs;
    for (const Id& id : streams) {
        StreamState stream = read(id);
        const auto kinds = kindsOf(stream.entries);
        if (kinds.contains(StreamKind::Machine) || kinds.contains(StreamKind::Owner)) {
            write(stream);
            jobs.merge(jobsOf(id));
        }
    }
    jobs.merge(streams);
    for (const Id& id : jobs) {
        kept_ = read(id);
        write(*kept_);
    }
}

std::vector<std::string> Projector::differences(const Id& id) {
    MemorySink wanted;
    putAll(read(id), wanted);
    std::vector<std::string> found;
    for (std::size_t i = 0; i < tables().size(); ++i) {
        const auto table = static_cast<TableId>(i);
        const std::string where = "table " + std::string(tables()[i].name) + ", row ";
        const RowsByKey present = readRows(database_, table, id);
        const RowsByKey& rows = wanted.rows().at(i);
        for (const auto& [key, row] : rows) {
            const auto at = present.find(key);
            if (at == present.end()) {
                found.push_back(where + shown(key) + ": is missing. 'store rebuild' mends it.");
            } else if (at->second != row) {
                found.push_back(where + shown(key) + ": differs from the entries. 'store rebuild' mends it.");
            }
        }
        for (const auto& [key, row] : present) {
            if (!rows.contains(key)) {
                found.push_back(where + shown(key) + ": no entry says so. 'store rebuild' mends it.");
            }
        }
    }
    return found;
}

} // namespace undercowl::store
