// Checking the store, and making its projections anew.
#include "core/store/place.h"
#include "core/store/readable.h"
#include "core/store/state.h"

#include "core/journal/fold.h"

#include <algorithm>
#include <unordered_map>

namespace undercowl::store {
namespace {

using journal::Entry;

struct Cancelled {};

class Steps {
public:
    Steps(const Progress& progress, std::size_t total) : progress_(progress), total_(total) {}
    void next() {
        if (progress_ && !progress_(++done_, total_)) {
            throw Cancelled{};
        }
    }

private:
    const Progress& progress_;
    std::size_t total_;
    std::size_t done_{};
};

Problem cancelled() {
    return {Fault::Refused, "cancelled; nothing was changed"};
}

std::string named(const Entry& entry) {
    return "entry " + entry.id + " (" + entry.kind + " of " + entry.stream + ")";
}

class Check {
public:
    Check(Store::State& state, const Progress& progress) : state_(state), progress_(progress) {}

    // What looks like a write to SQLite, and so needs a transaction of its own: begun later, it would fail
    // whenever another process had committed in between.
    void searchIndex() {
        SQLite::Transaction begun(state_.database.raw(), SQLite::TransactionBehavior::IMMEDIATE);
        try {
            state_.database.run("INSERT INTO search (search, rank) VALUES ('integrity-check', 1)");
        } catch (const SQLite::Exception& error) {
            if (problemOf(error).fault != Fault::Damaged) {
                throw;
            }
            fault(std::string("search index: ") + error.what() + ". 'store rebuild' mends it.");
        }
    }

    // Preconditions: searchIndex() was called, and one transaction gives one view of everything.
    CheckReport run() {
        std::vector<Id> streams;
        part("the journal", [&] {
            report_.entries = countEntries(state_.database);
            streams = allStreams(state_.database);
        });
        const auto names = state_.media.names();
        Steps steps(progress_, report_.entries + streams.size() + (names ? names->size() : 0) + 1);
        report_.faults.insert(report_.faults.end(), state_.unread.begin(), state_.unread.end());
        part("the database", [&] { database(); });
        steps.next();
        part("the journal", [&] { journal(steps); });
        if (damaged_) {
            unread();
        }
        part("the media", [&] { media(names, steps); });
        part("the tables", [&] { projections(streams, steps); });
        return std::move(report_);
    }

private:
    void fault(std::string text) { report_.faults.push_back(std::move(text)); }

    // A damaged page ends one part of the check, not all of it.
    template<typename Work>
    void part(const std::string& what, const Work& work) {
        try {
            work();
        } catch (const SQLite::Exception& error) {
            if (problemOf(error).fault != Fault::Damaged) {
                throw;
            }
            damaged_ = true;
            fault("database: " + what + " cannot be read to the end: " + error.what() +
                  ". 'store salvage' brings what can be read into a new place, and the rest from backups.");
        }
    }

    // Which entries lie on the damaged pages.
    void unread() {
        if (const auto read = readWhatCanBe(state_.folder / "shop.db")) {
            for (const std::string& one : read->faults) {
                fault(one);
            }
        }
    }

    // Where in the shop an entry belongs, as a mechanic would say it: " [job 2026-031, strip step 'unplug the
    // switch connector', photo]".
    std::string whereabouts(const Entry& entry) {
        const StreamState& stream = state_.projector.stream(entry.stream);
        if (stream.state.job.id.empty()) {
            return {};
        }
        return " [" + placeInJob(stream.state.job, entry, inTables(entry)) + "]";
    }

    // What the entry is about as the tables still say it: they were made before it was damaged.
    std::string inTables(const Entry& entry) {
        try {
            Using line(state_.database.prepared(
                "SELECT kind, title FROM search_line WHERE stream = ? AND subject = ? AND title <> '' AND "
                "kind IN "
                "('step', 'finding', 'part', 'reading', 'photo', 'memo') ORDER BY detail"));
            line->bind(1, entry.stream);
            line->bind(2, entry.subject);
            if (!line->executeStep()) {
                return {};
            }
            const std::string kind = line->getColumn(0).getString();
            return (kind == "step" ? "strip step" : kind) + " '" +
                   line->getColumn(1).getString().substr(0, 120) + "'";
        } catch (const SQLite::Exception&) { // then by its kind
            return {};
        }
    }

    void database() {
        Using integrity(state_.database.prepared("PRAGMA integrity_check"));
        while (integrity->executeStep()) {
            if (const auto line = integrity->getColumn(0).getString(); line != "ok") {
                fault("database: " + line);
            }
        }
        Using keys(state_.database.prepared("PRAGMA foreign_key_check"));
        while (keys->executeStep()) {
            fault("table " + keys->getColumn(0).getString() + ": a row refers to one in " +
                  keys->getColumn(2).getString() + " that is not there. 'store rebuild' mends it.");
        }
    }

    // The chain of this device has every number; of other devices only those are here that came with a job.
    void journal(Steps& steps) {
        std::optional<Entry> before;
        forEachEntry(state_.database, [&](const Entry& entry) {
            steps.next();
            if (auto problem = journal::sealProblem(entry)) {
                fault(*problem + " (" + entry.kind + " of " + entry.stream + ")" + whereabouts(entry));
            }
            const bool sameDevice = before && before->device == entry.device;
            const std::uint64_t expected = sameDevice ? before->number + 1 : 1;
            if (entry.number == expected) {
                if (entry.previous != (sameDevice ? before->hash : std::string{})) {
                    fault(named(entry) + ": does not follow the entry before it; the chain is broken");
                }
                if (sameDevice && !(before->clock < entry.clock)) {
                    fault(named(entry) + ": its clock does not come after the entry before it");
                }
            } else if (entry.device == state_.device) {
                fault("chain of this device: entries " + std::to_string(expected) + " to " +
                      std::to_string(entry.number - 1) + " are missing");
            }
            if (const auto file = journal::mediaNamed(entry); !file.empty()) {
                namedFiles_.emplace(file, entry);
                if (auto found = state_.media.find(file); !found) {
                    fault(named(entry) + ": " + found.error().message + whereabouts(entry));
                }
            }
            before = entry;
            return true;
        });
    }

    void media(const Result<std::vector<std::string>>& names, Steps& steps) {
        if (!names) {
            fault(names.error().message);
            return;
        }
        for (const std::string& name : *names) {
            steps.next();
            if (!isMediaName(name)) {
                fault("media/" + name + ": is not a media file of this store. Move it away.");
                continue;
            }
            ++report_.mediaFiles;
            if (auto problem = state_.media.problem(name)) {
                const auto by = namedFiles_.find(name);
                fault(*problem +
                      (by != namedFiles_.end() ? whereabouts(by->second) : " (no entry names it)"));
            }
        }
    }

    void projections(const std::vector<Id>& streams, Steps& steps) {
        for (const Id& stream : streams) {
            steps.next();
            for (std::string& difference : state_.projector.differences(stream)) {
                fault(std::move(difference));
            }
        }
        // Rows of streams that have no entry at all were not looked at above.
        for (const Table& table : tables()) {
            const std::string name(table.name);
            Using strays(state_.database.prepared("SELECT DISTINCT stream FROM " + name +
                                                  " WHERE stream NOT IN (SELECT stream FROM entry)"));
            while (strays->executeStep()) {
                fault("table " + name + ", stream " + strays->getColumn(0).getString() +
                      ": no entry says so. 'store rebuild' mends it.");
            }
        }
        Using jobs(state_.database.prepared("SELECT count(*) FROM job_line"));
        jobs->executeStep();
        report_.jobs = static_cast<std::size_t>(jobs->getColumn(0).getInt64());
    }

    Store::State& state_;
    const Progress& progress_;
    CheckReport report_;
    std::unordered_map<std::string, Entry> namedFiles_; // and the last entry that names each
    bool damaged_{};
};

} // namespace

Result<CheckReport> Store::check(const Progress& progress) const {
    return guarded([&]() -> Result<CheckReport> {
        state_->refresh();
        Check check(*state_, progress);
        check.searchIndex();
        const SQLite::Transaction view(state_->database.raw());
        try {
            return check.run();
        } catch (const Cancelled&) {
            return tl::unexpected(cancelled());
        }
    });
}

Result<void> Store::rebuild(const Progress& progress) {
    return inTransaction(*state_, [&]() -> Result<void> {
        try {
            state_->rebuildAll(progress);
            return {};
        } catch (const Cancelled&) {
            return tl::unexpected(cancelled());
        }
    });
}

void Store::State::rebuildAll(const Progress& progress) {
    projector.forget();
    // Emptied first, since dropping lines from a damaged index would fail.
    database.run("INSERT INTO search (search) VALUES ('delete-all')");
    for (const Table& table : tables()) {
        if (table.name != "search_line") {
            database.run("DELETE FROM " + std::string(table.name));
        }
    }
    database.run("DROP TRIGGER search_line_out");
    database.run("DELETE FROM search_line");
    database.run("CREATE TRIGGER search_line_out AFTER DELETE ON search_line BEGIN "
                 "INSERT INTO search (search, rowid, title, body, machine) "
                 "VALUES ('delete', old.rowid, old.title, old.body, old.machine); END");
    const auto streams = allStreams(database);
    Steps steps(progress, streams.size());
    for (const Id& stream : streams) {
        projector.redo({stream});
        steps.next();
    }
    setValue("device_state", "projection", std::to_string(projectionVersion));
}

} // namespace undercowl::store
