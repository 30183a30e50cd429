#include "core/store/store.h"

#include "core/journal/fold.h"
#include "core/store/limits.h"
#include "core/store/state.h"

#include <algorithm>
#include <array>
#include <utility>

namespace undercowl::store {
namespace {

using journal::Draft;
using journal::Entry;
using journal::StreamKind;

// Kinds that say something about a subject which another kind must have brought in.
constexpr std::array<std::pair<std::string_view, std::string_view>, 9> needs{{
    {"finding.settled", "finding.noted"},
    {"task.held", "task.named"},
    {"task.resumed", "task.named"},
    {"step.refitted", "step.stripped"},
    {"line.checked", "step.stripped"},
    {"wire.answered", "gathering.described"},
    {"place.empty", "gathering.described"},
    {"wire.tagged", "gathering.described"},
    {"wire.checked", "gathering.described"},
}};

bool any(std::span<const Entry> a, std::span<const Entry> b, const auto& fits) {
    return std::any_of(a.begin(), a.end(), fits) || std::any_of(b.begin(), b.end(), fits);
}

// What the draft refers to must be there already or come before it in the same batch.
std::optional<std::string> referenceProblem(const Draft& draft, const StreamState& stream,
                                            std::span<const Entry> batch) {
    const auto known = [&](const Id& id) {
        return any(stream.entries, batch,
                   [&](const Entry& entry) { return entry.id == id && entry.stream == draft.stream; });
    };
    if (!draft.supersedes.empty() && !known(draft.supersedes)) {
        return "supersedes: there is no entry " + draft.supersedes + " in " + draft.stream;
    }
    if (draft.kind == "entry.withdrawn") {
        return known(draft.subject) ? std::nullopt
                                    : std::optional("subject: there is no entry " + draft.subject + " in " +
                                                    draft.stream + " to withdraw");
    }
    Entry probe;
    probe.kind = draft.kind;
    if (streamKind(probe) == StreamKind::Job && draft.kind != "job.opened") {
        const bool opened = !stream.state.job.opened.entry.empty() ||
                            std::any_of(batch.begin(), batch.end(), [&](const Entry& entry) {
                                return entry.kind == "job.opened" && entry.stream == draft.stream;
                            });
        if (!opened) {
            return "stream: there is no open job " + draft.stream + "; open it first, or bring it back";
        }
    }
    for (const auto& [kind, bringing] : needs) {
        if (draft.kind == kind && !any(stream.entries, batch, [&, brings = bringing](const Entry& entry) {
                return entry.stream == draft.stream && entry.subject == draft.subject && entry.kind == brings;
            })) {
            return "subject: the job has nothing with the id " + draft.subject + " that " + draft.kind +
                   " could be about";
        }
    }
    return std::nullopt;
}

Entry sealed(const Draft& draft, Store::State& state, job::TimeMs now) {
    Entry entry;
    entry.id = journal::newId(now);
    entry.device = state.device;
    entry.number = state.head.number + 1;
    entry.clock = tick(state.newest, now);
    entry.kind = draft.kind;
    entry.stream = draft.stream;
    entry.subject = draft.subject;
    entry.mechanic = state.mechanic;
    entry.supersedes = draft.supersedes;
    entry.body = draft.body;
    entry.previous = state.head.hash;
    seal(entry);
    state.head = {entry.number, entry.hash, entry.clock};
    state.newest = entry.clock;
    return entry;
}

} // namespace

Id Store::device() const {
    return state_->device;
}
Id Store::mechanic() const {
    return state_->mechanic;
}
Id Store::newId() const {
    return journal::newId(now());
}
job::TimeMs Store::now() const {
    return state_->clock();
}
const std::filesystem::path& Store::folder() const {
    return state_->folder;
}
std::shared_ptr<Files> Store::files() const {
    return state_->files;
}
std::string Store::readOnly() const {
    return state_->readOnly;
}

Result<void> Store::chooseMechanic(const Id& mechanic) {
    return inTransaction(*state_, [&]() -> Result<void> {
        Using known(state_->database.prepared("SELECT 1 FROM mechanic WHERE id = ?"));
        known->bind(1, mechanic);
        if (!known->executeStep()) {
            return failed(Fault::NotFound,
                          "mechanic: nobody has the id '" + mechanic + "'; name the mechanic first");
        }
        state_->setValue("device_state", "mechanic", mechanic);
        state_->mechanic = mechanic;
        return {};
    });
}

std::string Store::setting(std::string_view name) const {
    return guarded([&]() -> Result<std::string> { return state_->value("setting", name); }).value_or("");
}

Result<void> Store::set(std::string_view name, std::string_view value) {
    if (name.empty() || name.size() > longestName || value.size() > longestDraft) {
        return failed(Fault::Refused, "setting: a name has 1 to 200 bytes, a value at most 1 MiB");
    }
    return inTransaction(*state_, [&]() -> Result<void> {
        state_->setValue("setting", name, value);
        return {};
    });
}

Result<std::vector<Entry>> Store::append(std::span<const Draft> drafts) {
    for (const Draft& draft : drafts) {
        if (auto problem = draftProblem(draft)) {
            return failed(Fault::Refused, *problem);
        }
        Entry named;
        named.kind = draft.kind;
        named.body = draft.body;
        if (const std::string file = journal::mediaNamed(named); !file.empty()) {
            if (auto found = state_->media.find(file); !found) {
                return failed(Fault::Refused, draft.kind + ": " + found.error().message);
            }
        }
    }
    return inTransaction(*state_, [&]() -> Result<std::vector<Entry>> {
        std::vector<Entry> entries;
        for (const Draft& draft : drafts) {
            if (state_->mechanic.empty() && draft.kind != "mechanic.named") {
                return failed(Fault::Refused,
                              "mechanic: nobody has been chosen; choose who works on this device");
            }
            const StreamState& stream = state_->projector.stream(draft.stream);
            if (auto problem = referenceProblem(draft, stream, entries)) {
                return failed(Fault::Refused, draft.kind + ": " + *problem);
            }
            entries.push_back(sealed(draft, *state_, now()));
        }
        for (const Entry& entry : entries) { // only now: until here the projector reads what was there before
            insertEntry(state_->database, entry);
        }
        state_->projector.entriesAdded(entries);
        return entries;
    });
}

Result<Entry> Store::append(const Draft& draft) {
    return append(std::span(&draft, 1)).map([](const std::vector<Entry>& entries) {
        return entries.front();
    });
}

Result<Media> Store::keepMedia(std::span<const std::byte> bytes, std::string_view suffix) {
    if (!state_->readOnly.empty()) {
        return failed(Fault::CannotOpen, state_->readOnly);
    }
    auto name = state_->media.keep(bytes, suffix, newId());
    if (!name) {
        return tl::unexpected(name.error());
    }
    return Media{*name, state_->folder / "media" / *name};
}

Result<std::filesystem::path> Store::media(std::string_view name) const {
    return state_->media.find(name);
}

Result<void> Store::keepDraft(std::string_view form, std::string_view json) {
    if (form.empty() || form.size() > longestName || json.size() > longestDraft) {
        return failed(Fault::Refused, "draft: a form's name has 1 to 200 bytes, a draft at most 1 MiB");
    }
    return inTransaction(*state_, [&]() -> Result<void> {
        Using statement(state_->database.prepared(
            "INSERT INTO draft (form, json, at) VALUES (?, ?, ?) ON CONFLICT (form) DO UPDATE SET json = "
            "excluded.json, at = excluded.at"));
        statement->bind(1, std::string(form));
        statement->bind(2, std::string(json));
        statement->bind(3, now());
        statement->exec();
        return {};
    });
}

std::optional<std::string> Store::draft(std::string_view form) const {
    const auto found = guarded([&]() -> Result<std::optional<std::string>> {
        Using statement(state_->database.prepared("SELECT json FROM draft WHERE form = ?"));
        statement->bind(1, std::string(form));
        return statement->executeStep() ? std::optional(statement->getColumn(0).getString()) : std::nullopt;
    });
    return found.value_or(std::nullopt);
}

Result<void> Store::dropDraft(std::string_view form) {
    return inTransaction(*state_, [&]() -> Result<void> {
        Using statement(state_->database.prepared("DELETE FROM draft WHERE form = ?"));
        statement->bind(1, std::string(form));
        statement->exec();
        return {};
    });
}

} // namespace undercowl::store
