#include "core/job/knowledge.h"

#include "core/job/text.h"
#include "core/job/worktime.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <map>
#include <tuple>
#include <utility>

namespace undercowl::job {
namespace {

constexpr std::array<std::string_view, 7> kindCodes{"limit",      "torque",  "part",   "map",
                                                    "adjustment", "finding", "minutes"};
constexpr std::size_t shortestSecret = 3; // letters of an owner's word that is looked for

auto keyOf(const Fact& fact) {
    return std::tie(fact.kind, fact.what, fact.says, fact.source);
}

// The words that must not leave the shop: the owner's as typed, and each word of the name.
std::vector<std::string> secretsOf(const Owner& owner, const Machine& machine) {
    std::vector<std::string> secrets;
    const auto add = [&](std::string_view text) {
        if (std::string small = folded(text); small.size() >= shortestSecret)
            secrets.push_back(std::move(small));
    };
    for (const std::string* text :
         {&owner.name, &owner.phone, &owner.mail, &owner.address, &machine.frameNumber})
        add(*text);
    for (std::size_t from = 0; from < owner.name.size();) {
        const std::size_t to = std::min(owner.name.find(' ', from), owner.name.size());
        add(std::string_view(owner.name).substr(from, to - from));
        from = to + 1;
    }
    return secrets;
}

class Learning {
public:
    Learning(const Job& job, std::vector<std::string> secrets) : job_(job), secrets_(std::move(secrets)) {}

    void add(FactKind kind, std::string what, std::string says, std::string source = {}) {
        if (what.empty() || tells(what) || tells(says) || tells(source))
            return;
        facts_.push_back({kind, std::move(what), std::move(says), std::move(source), {job_.id}});
    }

    [[nodiscard]] std::vector<Fact> facts() && {
        std::sort(facts_.begin(), facts_.end(),
                  [](const Fact& a, const Fact& b) { return keyOf(a) < keyOf(b); });
        const auto last = std::unique(facts_.begin(), facts_.end());
        facts_.erase(last, facts_.end());
        return std::move(facts_);
    }

private:
    [[nodiscard]] bool tells(std::string_view text) const {
        const std::string small = folded(text);
        return std::any_of(secrets_.begin(), secrets_.end(), [&](const std::string& secret) {
            return small.find(secret) != std::string::npos;
        });
    }

    const Job& job_;
    std::vector<std::string> secrets_;
    std::vector<Fact> facts_;
};

std::string written(const TypedValue& value) {
    return value.unit.empty() ? value.digits : value.digits + " " + value.unit;
}

std::string limitOf(const Reading& reading) {
    if (reading.low && reading.high)
        return written(*reading.low) + " to " + written(*reading.high);
    if (reading.low)
        return "at least " + written(*reading.low);
    return reading.high ? "at most " + written(*reading.high) : std::string{};
}

// "KX-4410: fits"; a part that is merely fitted fits.
std::string fitOf(const Part& part) {
    switch (part.fitted) {
    case PartFit::Fits: return part.number + ": fits";
    case PartFit::FitsAfterChange: return part.number + ": fits after a change (" + part.fit + ")";
    case PartFit::DoesNotFit: return part.number + ": does not fit (" + part.fit + ")";
    case PartFit::NotSaid: break;
    }
    return part.state == PartState::Fitted ? part.number + ": fits" : std::string{};
}

// "loom 1 GN/WH stop lamp; loom 2 BK": what should be where it is known, otherwise as found.
std::string mapOf(const wiring::Gathering& gathering) {
    std::vector<const wiring::Place*> places;
    for (const wiring::Place& place : gathering.held)
        places.push_back(&place);
    std::sort(places.begin(), places.end(), [](const auto* a, const auto* b) {
        return std::tie(a->key.half, a->key.number, a->key.slot) <
               std::tie(b->key.half, b->key.number, b->key.slot);
    });
    std::string map;
    for (const wiring::Place* place : places) {
        const auto& should = place->answer(wiring::Answer::AsItShouldBe);
        const auto& answer = should ? should : place->answer(wiring::Answer::AsFound);
        if (!answer)
            continue;
        map += (map.empty() ? "" : "; ") + std::string(code(place->key.half)) + " " +
               std::to_string(place->key.number) + (place->key.slot == 1 ? "" : "b") + " " +
               std::string(colour::code(answer->wire.colour));
        if (!answer->wire.function.empty())
            map += " " + answer->wire.function;
    }
    return map;
}

bool barsOthers(FactKind kind) {
    return kind == FactKind::Limit || kind == FactKind::Torque || kind == FactKind::Map ||
           kind == FactKind::Adjustment;
}

} // namespace

bool sameModel(std::string_view makeA, std::string_view modelA, std::string_view makeB,
               std::string_view modelB) {
    return folded(makeA) == folded(makeB) && folded(modelA) == folded(modelB);
}

ModelKnowledge learn(const Job& job, const Machine& machine, const Owner& owner, TimeMs now) {
    Learning learning(job, secretsOf(owner, machine));
    for (const Reading& reading : job.readings)
        if (std::string limit = limitOf(reading); !limit.empty() && !reading.limitSource.empty())
            learning.add(FactKind::Limit, reading.what, std::move(limit), reading.limitSource);
    for (const StripStep& step : job.steps) {
        for (const Hardware& hardware : step.hardware)
            if (hardware.torque)
                learning.add(FactKind::Torque,
                             step.title + ": " + hardware.what +
                                 (hardware.thread.empty() ? "" : " " + hardware.thread),
                             written(*hardware.torque));
        if (!step.asFound.empty())
            learning.add(FactKind::Adjustment, step.title, step.asFound);
    }
    for (const Part& part : job.parts)
        if (std::string fit = part.number.empty() ? std::string{} : fitOf(part); !fit.empty())
            learning.add(FactKind::Part, part.name, std::move(fit), part.supplier);
    for (const wiring::Gathering& gathering : job.gatherings)
        if (std::string map = mapOf(gathering); !map.empty())
            learning.add(FactKind::Map, gathering.title, std::move(map));
    for (const Finding& finding : job.findings)
        learning.add(FactKind::Finding, finding.text, finding.toDo);
    for (const Task& task : job.tasks)
        if (const int minutes = minutesSpent(job, task.id, now); minutes > 0)
            learning.add(FactKind::Minutes, task.title, std::to_string(minutes) + " min");
    return {machine.make, machine.model, machine.year, machine.year, std::move(learning).facts()};
}

ModelKnowledge merged(const ModelKnowledge& a, const ModelKnowledge& b) {
    ModelKnowledge both;
    std::tie(both.make, both.model) = std::min(std::tie(a.make, a.model), std::tie(b.make, b.model));
    const auto pick = [](std::optional<int> one, std::optional<int> other, auto better) {
        return one && other ? std::optional(better(*one, *other)) : one ? one : other;
    };
    both.firstYear = pick(a.firstYear, b.firstYear, [](int x, int y) { return std::min(x, y); });
    both.lastYear = pick(a.lastYear, b.lastYear, [](int x, int y) { return std::max(x, y); });
    std::map<std::tuple<FactKind, std::string, std::string, std::string>, std::set<Id>> facts;
    for (const ModelKnowledge* from : {&a, &b})
        for (const Fact& fact : from->facts)
            facts[keyOf(fact)].insert(fact.seen.begin(), fact.seen.end());
    for (auto& [key, seen] : facts)
        both.facts.push_back(
            {std::get<0>(key), std::get<1>(key), std::get<2>(key), std::get<3>(key), std::move(seen)});
    return both;
}

std::vector<std::vector<const Fact*>> contradictions(const ModelKnowledge& known) {
    std::map<std::pair<FactKind, std::string>, std::vector<const Fact*>> groups;
    for (const Fact& fact : known.facts) {
        if (barsOthers(fact.kind))
            groups[{fact.kind, folded(fact.what)}].push_back(&fact);
        else if (fact.kind == FactKind::Part)
            groups[{fact.kind, folded(fact.says.substr(0, fact.says.find(": ")))}].push_back(&fact);
    }
    std::vector<std::vector<const Fact*>> found;
    for (auto& [key, facts] : groups) {
        if (std::all_of(facts.begin(), facts.end(),
                        [first = facts.front()](const Fact* fact) { return fact->says == first->says; }))
            continue;
        std::stable_sort(facts.begin(), facts.end(),
                         [](const Fact* a, const Fact* b) { return a->seen.size() > b->seen.size(); });
        found.push_back(facts);
    }
    return found;
}

std::string_view code(FactKind kind) {
    return kindCodes.at(static_cast<std::size_t>(kind));
}

std::optional<FactKind> factKindFromCode(std::string_view text) {
    const auto found = std::find(kindCodes.begin(), kindCodes.end(), text);
    if (found == kindCodes.end())
        return std::nullopt;
    return static_cast<FactKind>(found - kindCodes.begin());
}

} // namespace undercowl::job
