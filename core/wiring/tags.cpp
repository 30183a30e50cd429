#include "core/wiring/tags.h"

#include "core/colour/distribution.h"

#include <algorithm>
#include <cstddef>
#include <optional>

namespace undercowl::wiring {
namespace {

constexpr double closest = 11.0; // CIEDE2000

bool alike(colour::Insulation one, colour::Insulation other, const colour::Vision& vision) {
    if (one == other)
        return true;
    if (vision.deficiency == colour::Deficiency::None || vision.severity <= 0.0)
        return false;
    return colour::differenceAsSeen(colour::distribution(one).mean, colour::distribution(other).mean,
                                    vision) < closest;
}

const Wire& found(const Place* place) {
    return place->answer(Answer::AsFound)->wire;
}

bool apart(const Place* one, const Place* other, const colour::Vision& vision) {
    if (!looksAlike(found(one).colour, found(other).colour, vision))
        return true;
    const std::string a = text(found(one).terminal);
    const std::string b = text(found(other).terminal);
    return (!a.empty() && !b.empty() && a != b) || one->tag != other->tag;
}

// For each wire those that it is taken for.
using Graph = std::vector<std::vector<std::size_t>>;

// The fewest wires so that every pair that is taken for one another has one of them; wires that are 'in'
// already or 'out' of the question are skipped. Either the wire with the most doubles is taken, or all of its
// doubles.
std::vector<std::size_t> fewest(const Graph& doubles, std::vector<char>& gone) {
    std::size_t most = 0;
    std::size_t worst = 0;
    for (std::size_t i = 0; i < doubles.size(); ++i) {
        const auto open = gone[i] != 0 ? 0
                                       : std::count_if(doubles[i].begin(), doubles[i].end(),
                                                       [&](std::size_t j) { return gone[j] == 0; });
        if (open > 0 && std::size_t(open) >= most) { // the later place carries the tag
            most = std::size_t(open);
            worst = i;
        }
    }
    if (most == 0)
        return {};
    gone[worst] = 1;
    std::vector<std::size_t> with = fewest(doubles, gone);
    with.push_back(worst);
    if (most == 1) { // one of the two has to be; either will do
        gone[worst] = 0;
        return with;
    }
    std::vector<std::size_t> taken;
    for (const std::size_t j : doubles[worst])
        if (gone[j] == 0) {
            gone[j] = 1;
            taken.push_back(j);
        }
    std::vector<std::size_t> without;
    if (taken.size() < with.size())
        without = fewest(doubles, gone);
    const bool better = taken.size() + without.size() < with.size();
    for (const std::size_t j : taken)
        gone[j] = 0;
    gone[worst] = 0;
    if (!better)
        return with;
    without.insert(without.end(), taken.begin(), taken.end());
    return without;
}

} // namespace

bool looksAlike(const colour::WireColour& one, const colour::WireColour& other,
                const colour::Vision& vision) {
    if (one == other)
        return true;
    const auto seenTracer = [&](const colour::WireColour& wire) {
        return wire.tracer && alike(wire.base, *wire.tracer, vision) ? std::nullopt : wire.tracer;
    };
    const auto a = seenTracer(one);
    const auto b = seenTracer(other);
    if (a.has_value() != b.has_value() || !alike(one.base, other.base, vision))
        return false;
    return !a || alike(*a, *b, vision);
}

TagPlan fewestTags(const Gathering& gathering, Half half, const colour::Vision& vision) {
    const std::vector<const Place*> places = placesOf(gathering, half, Answer::AsFound);
    Graph doubles(places.size());
    TagPlan plan;
    for (std::size_t i = 0; i < places.size(); ++i)
        for (std::size_t j = i + 1; j < places.size(); ++j) {
            if (apart(places[i], places[j], vision))
                continue;
            doubles[i].push_back(j);
            doubles[j].push_back(i);
            if (!(found(places[i]).colour == found(places[j]).colour))
                plan.alike.emplace_back(places[i], places[j]);
        }
    std::vector<char> gone(places.size());
    std::vector<std::size_t> chosen = fewest(doubles, gone);
    std::sort(chosen.begin(), chosen.end());
    for (const std::size_t i : chosen)
        plan.toTag.push_back(places[i]);
    return plan;
}

std::string englishAdvice(const TagPlan& plan) {
    std::string advice;
    for (const auto& [one, other] : plan.alike)
        advice += "places " + std::to_string(one->key.number) + " and " + std::to_string(other->key.number) +
                  " look alike to you: " + englishWords(found(one).colour) + " and " +
                  englishWords(found(other).colour) + "; ";
    if (plan.toTag.empty())
        return advice;
    advice += plan.toTag.size() == 1 ? "tag place" : "tag places";
    for (const Place* place : plan.toTag)
        advice += ' ' + std::to_string(place->key.number);
    return advice;
}

} // namespace undercowl::wiring
