// Entries from elsewhere, and the redaction of what is here.
#include "core/store/chain.h"
#include "core/store/limits.h"
#include "core/store/state.h"

#include "core/journal/fold.h"

#include <algorithm>
#include <map>

namespace undercowl::store {
namespace {

using journal::Entry;

tl::unexpected<Problem> refused(std::string message) {
    return failed(Fault::Refused, std::move(message));
}

} // namespace

Result<Store::State::Merge> Store::State::plan(std::span<const Entry> entries) {
    Merge merge;
    std::map<std::pair<Id, std::uint64_t>, const Entry*> byNumber;
    for (const Entry& entry : entries) {
        if (auto problem = entryProblem(entry)) {
            return refused(*problem);
        }
        const auto [at, fresh] = byNumber.emplace(std::pair(entry.device, entry.number), &entry);
        if (!fresh && at->second->hash != entry.hash) {
            return refused("entry " + entry.id + ": device " + entry.device +
                           " has two different entries number " + std::to_string(entry.number) +
                           "; one of two copies of its store went on apart");
        }
        if (!fresh && at->second->redacted && !entry.redacted) {
            at->second = &entry;
        }
    }
    for (const auto& [key, unique] : byNumber) {
        const Entry* entry = unique;
        const auto same = entryById(database, entry->id);
        const auto there = entryByNumber(database, entry->device, entry->number);
        if (same ? same->hash != entry->hash : there.has_value()) {
            return refused("entry " + entry->id + ": this store has another entry of device " +
                           entry->device + ", number " + std::to_string(entry->number) +
                           "; one of two copies of its store went on apart");
        }
        if (same) {
            if (same->redacted && !entry->redacted && !redactedHere(database, entry->id)) {
                merge.restored.push_back(*entry);
            }
            continue;
        }
        const auto neighbour = [&](std::uint64_t number) -> std::optional<Entry> {
            const auto at = byNumber.find({entry->device, number});
            return at != byNumber.end() ? std::optional(*at->second)
                                        : entryByNumber(database, entry->device, number);
        };
        if (const auto before = neighbour(entry->number - 1)) {
            if (auto problem = linkProblem(*before, *entry)) {
                return refused(*problem);
            }
        }
        if (const auto after = neighbour(entry->number + 1)) {
            if (auto problem = linkProblem(*entry, *after)) {
                return refused(*problem);
            }
        }
        merge.added.push_back(*entry);
    }
    return merge;
}

Result<std::size_t> Store::mergeable(std::span<const Entry> entries) const {
    return guarded([&]() -> Result<std::size_t> {
        return state_->plan(entries).map([](const auto& merge) { return merge.added.size(); });
    });
}

Result<std::size_t> Store::merge(std::span<const Entry> entries) {
    return inTransaction(*state_, [&]() -> Result<std::size_t> {
        auto merge = state_->plan(entries);
        if (!merge) {
            return tl::unexpected(merge.error());
        }
        std::vector<Entry> touched = merge->added;
        touched.insert(touched.end(), merge->restored.begin(), merge->restored.end());
        journal::Clock newest = state_->newest;
        bool ownAhead = false;
        for (const Entry& entry : touched) {
            if (const std::string file = journal::mediaNamed(entry); !file.empty()) {
                if (auto found = state_->media.find(file); !found) {
                    return refused("entry " + entry.id + ": " + found.error().message);
                }
            }
            newest = std::max(newest, entry.clock);
            ownAhead = ownAhead || (entry.device == state_->device && entry.number > state_->head.number);
        }
        for (const Entry& entry : merge->added) {
            insertEntry(state_->database, entry);
        }
        for (const Entry& entry : merge->restored) {
            restoreBody(state_->database, entry);
        }
        if (newest > state_->newest) {
            state_->newest = newest;
            state_->setValue("device_state", "merged_ms", std::to_string(newest.wallMs));
            state_->setValue("device_state", "merged_counter", std::to_string(newest.counter));
        }
        if (ownAhead) {
            // This store was put back from an older copy. Going on under the same name would give two entries
            // one number.
            state_->becomeNewDevice();
        }
        std::set<Id> streams;
        for (const Entry& entry : touched) {
            streams.insert(entry.stream);
        }
        state_->projector.redo(std::move(streams));
        return merge->added.size();
    });
}

Result<std::size_t> Store::redact(const Id& stream) {
    auto gone = inTransaction(*state_, [&]() -> Result<std::size_t> {
        const std::size_t count = redactStream(state_->database, stream);
        if (count == 0 && entriesOf(state_->database, stream).empty()) {
            return failed(Fault::NotFound, "redact: nothing is known of '" + stream + "'");
        }
        state_->projector.redo({stream});
        // The search index keeps dropped words until its parts are joined.
        state_->database.run("INSERT INTO search (search) VALUES ('optimize')");
        return count;
    });
    if (!gone) {
        return gone;
    }
    // The log still has the old pages: it is emptied, and zeroed pages take their place in the file.
    const auto emptied = guarded([&]() -> Result<void> {
        state_->database.run("PRAGMA wal_checkpoint(TRUNCATE)");
        return {};
    });
    return emptied ? gone : tl::unexpected(emptied.error());
}

} // namespace undercowl::store
