// What a job takes over of what the shop knows of its model.
#include "core/job/text.h"
#include "core/journal/knowledgefile.h"
#include "core/journal/say.h"

#include <algorithm>
#include <cctype>
#include <charconv>

namespace undercowl::journal {
namespace {

std::string heldIn(const job::Fact& fact, const TakenWords& words) {
    return fact.source.empty() ? words.held : fact.source + ", " + words.held;
}

Draft memo(const job::Job& job, const job::Fact& fact, const TakenWords& words, const Id& id) {
    job::Memo memo;
    memo.id = id;
    memo.text = words.kind + ": " + fact.what + (fact.says.empty() ? "" : ": " + fact.says) + " (" +
                heldIn(fact, words) + ")";
    return memoKept(job.id, memo);
}

Draft part(const job::Job& job, const job::Fact& fact, const TakenWords& words, const Id& id) {
    job::Part part;
    part.id = id;
    part.name = fact.what;
    part.number = fact.says.substr(0, fact.says.find(": "));
    part.note = fact.says + " (" + heldIn(fact, words) + ")";
    return partStated(job.id, part);
}

Draft finding(const job::Job& job, const job::Fact& fact, const TakenWords& words, const Id& id) {
    job::Finding finding;
    finding.id = id;
    finding.text = fact.what + " (" + words.lookHere + "; " + heldIn(fact, words) + ")";
    finding.toDo = fact.says;
    finding.severity = job::Severity::Note;
    return findingNoted(job.id, finding);
}

Draft task(const job::Job& job, const job::Fact& fact, const Id& id) {
    job::Task task;
    task.id = id;
    task.title = fact.what;
    int minutes = 0;
    if (std::from_chars(fact.says.data(), fact.says.data() + fact.says.size(), minutes).ec == std::errc{})
        task.minutes = minutes;
    return taskNamed(job.id, task);
}

struct KnownWire {
    wiring::PlaceKey place;
    wiring::Wire wire;
};

// "loom 2b GN/WH stop lamp", as job::learn writes it; nothing for anything else.
std::optional<KnownWire> knownWire(std::string_view text) {
    const auto word = [&text] {
        const std::size_t end = std::min(text.find(' '), text.size());
        const std::string_view first = text.substr(0, end);
        text.remove_prefix(std::min(end + 1, text.size()));
        return first;
    };
    KnownWire known;
    const auto half = wiring::halfFromCode(word());
    std::string_view number = word();
    const bool second = number.ends_with('b');
    if (second)
        number.remove_suffix(1);
    const auto read = std::from_chars(number.data(), number.data() + number.size(), known.place.number);
    const auto colour = colour::wireColourFromCode(word());
    if (!half || read.ec != std::errc{} || read.ptr != number.data() + number.size() ||
        known.place.number < 1 || !colour)
        return std::nullopt;
    known.place.half = *half;
    known.place.slot = second ? 2 : 1;
    known.wire.colour = *colour;
    known.wire.function = text;
    return known;
}

std::optional<std::vector<KnownWire>> knownMap(std::string_view says) {
    std::vector<KnownWire> wires;
    while (!says.empty()) {
        const std::size_t end = std::min(says.find("; "), says.size());
        const auto wire = knownWire(says.substr(0, end));
        if (!wire)
            return std::nullopt;
        wires.push_back(*wire);
        says.remove_prefix(std::min(end + 2, says.size()));
    }
    return wires;
}

// As it should be, beside whatever was found: the two are compared, none replaces the other.
std::vector<Draft> map(const job::Job& job, const job::Fact& fact, const TakenWords& words,
                       const std::function<Id()>& newId) {
    const auto wires = knownMap(fact.says);
    if (!wires || wires->empty())
        return {memo(job, fact, words, newId())};
    std::vector<Draft> drafts;
    const std::string title = job::folded(fact.what);
    const auto known =
        std::find_if(job.gatherings.begin(), job.gatherings.end(), [&](const wiring::Gathering& gathering) {
            return job::folded(gathering.title) == title;
        });
    Id id = known == job.gatherings.end() ? Id{} : known->id;
    if (id.empty()) {
        wiring::Gathering gathering;
        gathering.id = id = newId();
        gathering.title = fact.what;
        for (const KnownWire& wire : *wires)
            gathering.places = std::max(gathering.places, wire.place.number);
        drafts.push_back(gatheringDescribed(job.id, gathering));
    }
    for (const KnownWire& wire : *wires) {
        wiring::PlaceAnswer answer;
        answer.wire = wire.wire;
        answer.how = wiring::HowKnown::Typed;
        answer.source = words.record + ", " + heldIn(fact, words);
        drafts.push_back(wireAnswered(job.id, id, wire.place, wiring::Answer::AsItShouldBe, answer));
    }
    return drafts;
}

} // namespace

std::vector<Draft> takenOver(const job::Job& job, const job::Fact& fact, const TakenWords& words,
                             const std::function<Id()>& newId) {
    switch (fact.kind) {
    case job::FactKind::Part: return {part(job, fact, words, newId())};
    case job::FactKind::Finding: return {finding(job, fact, words, newId())};
    case job::FactKind::Minutes: return {task(job, fact, newId())};
    case job::FactKind::Map: return map(job, fact, words, newId);
    case job::FactKind::Limit:
    case job::FactKind::Torque:
    case job::FactKind::Adjustment: break;
    }
    return {memo(job, fact, words, newId())};
}

} // namespace undercowl::journal
