#include "core/journal/fold.h"

#include "core/journal/apply.h"
#include "core/journal/instruments.h"
#include "core/journal/knowledgefile.h"
#include "core/journal/rounds.h"

#include <algorithm>
#include <tuple>

namespace undercowl::journal {
namespace {

Json parsed(const Entry& entry) {
    // Not thrown: a body that is no JSON at all is as unreadable as one of the wrong shape.
    Json body = Json::parse(entry.body, nullptr, false);
    if (body.is_discarded())
        throw ShapeError("body: not JSON");
    return body;
}

// Calls 'read' with the body of an entry in force. Answers false when the body does not have its shape. A
// redacted body says nothing.
template<typename Read>
bool readBody(const InForce& entry, const Read& read) {
    if (entry.last->redacted)
        return true;
    try {
        const Json body = parsed(*entry.last);
        read(Fields(body));
        return true;
    } catch (const ShapeError&) {
        return false;
    } catch (const Json::exception&) {
        return false;
    }
}

void applyEffect(job::Job& job, const InForce& entry) {
    const ApplyToJob apply = applyToJob(entry.last->kind);
    const bool read =
        apply != nullptr && readBody(entry, [&](const Fields& body) { apply(job, body, entry); });
    if (!read)
        job.unreadable.push_back(entry.last->id);
}

void addLine(job::Job& job, const Sorted& sorted) {
    const Entry& entry = *sorted.entry;
    job.history.push_back({entry.id, entry.kind, entry.subject, entry.mechanic, entry.clock.wallMs,
                           sorted.withdrawn, sorted.superseded});
}

} // namespace

job::Job foldJob(const Id& id, std::span<const Entry> entries) {
    job::Job job;
    job.id = id;
    const Forces forces = inForce(id, entries);
    for (const InForce& entry : forces.effects)
        applyEffect(job, entry);
    for (const Sorted& sorted : forces.all)
        addLine(job, sorted);
    return job;
}

bool foldOnto(job::Job& job, const Entry& entry) {
    if (!entry.supersedes.empty() || entry.kind == "entry.withdrawn")
        return false;
    applyEffect(job, {&entry, &entry});
    addLine(job, {&entry, false, false});
    return true;
}

job::Machine foldMachine(const Id& id, std::span<const Entry> entries) {
    job::Machine machine;
    machine.id = id;
    for (const InForce& entry : inForce(id, entries).effects)
        if (entry.last->kind == "machine.described")
            readBody(entry, [&](const Fields& body) { machine = readMachine(id, body); });
    return machine;
}

job::Owner foldOwner(const Id& id, std::span<const Entry> entries) {
    job::Owner owner;
    owner.id = id;
    for (const InForce& entry : inForce(id, entries).effects)
        if (entry.last->kind == "owner.described")
            readBody(entry, [&](const Fields& body) { owner = readOwner(id, body); });
    return owner;
}

std::vector<job::Mechanic> foldMechanics(std::span<const Entry> entries) {
    std::vector<job::Mechanic> mechanics;
    for (const InForce& entry : inForce(shopStream, entries).effects) {
        if (entry.last->kind != "mechanic.named")
            continue;
        readBody(entry, [&](const Fields& body) {
            job::Mechanic mechanic = readMechanic(entry.last->subject, body);
            std::erase_if(mechanics, [&](const job::Mechanic& old) { return old.id == mechanic.id; });
            mechanics.push_back(std::move(mechanic));
        });
    }
    std::sort(mechanics.begin(), mechanics.end(),
              [](const auto& a, const auto& b) { return std::tie(a.name, a.id) < std::tie(b.name, b.id); });
    return mechanics;
}

StreamKind streamKind(const Entry& entry) {
    if (entry.kind == "mechanic.named" || entry.kind == "instrument.kept" || entry.kind == "round.kept" ||
        entry.kind == "knowledge.learned")
        return StreamKind::Shop;
    if (entry.kind == "machine.described")
        return StreamKind::Machine;
    if (entry.kind == "owner.described")
        return StreamKind::Owner;
    return applyToJob(entry.kind) != nullptr ? StreamKind::Job : StreamKind::Unknown;
}

std::optional<std::string> shapeProblem(const Entry& entry) {
    if (entry.redacted)
        return std::nullopt;
    try {
        const Json json = parsed(entry);
        const Fields body(json);
        const InForce alone{&entry, &entry};
        switch (streamKind(entry)) {
        case StreamKind::Shop:
            if (entry.kind == "instrument.kept")
                static_cast<void>(readInstrument(entry.subject, body));
            else if (entry.kind == "round.kept")
                static_cast<void>(readRoundList(body));
            else if (entry.kind == "knowledge.learned")
                static_cast<void>(readKnowledge(body));
            else
                static_cast<void>(readMechanic(entry.subject, body));
            break;
        case StreamKind::Machine: static_cast<void>(readMachine(entry.subject, body)); break;
        case StreamKind::Owner: static_cast<void>(readOwner(entry.subject, body)); break;
        case StreamKind::Job: {
            job::Job scratch;
            applyToJob(entry.kind)(scratch, body, alone);
            break;
        }
        case StreamKind::Unknown:
            if (entry.kind != "entry.withdrawn")
                return "kind: '" + entry.kind + "' is not known";
        }
        return std::nullopt;
    } catch (const ShapeError& error) {
        return entry.kind + ": " + error.what();
    } catch (const Json::exception& error) {
        return entry.kind + ": " + error.what();
    }
}

std::string mediaNamed(const Entry& entry) {
    if (entry.redacted ||
        (entry.kind != "photo.taken" && entry.kind != "memo.kept" && entry.kind != "owner.signed"))
        return {};
    const Json body = Json::parse(entry.body, nullptr, false);
    const auto found = body.is_object() ? body.find("media") : body.end();
    return found != body.end() && found->is_string() ? found->get<std::string>() : std::string{};
}

} // namespace undercowl::journal
