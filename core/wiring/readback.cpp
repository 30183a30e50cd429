#include "core/wiring/readback.h"

#include "core/wiring/twins.h"

#include <algorithm>

namespace undercowl::wiring {
namespace {

// Two answers contradict when the colour differs, or a thing that both know: a function that only one has is
// no dispute.
bool contradict(const Wire& a, const Wire& b) {
    const auto differ = [](const auto& x, const auto& y, const auto& none) {
        return x != none && y != none && x != y;
    };
    return a.colour != b.colour || differ(text(a.terminal), text(b.terminal), std::string{}) ||
           differ(a.function, b.function, std::string{}) || differ(a.din, b.din, std::string{});
}

std::vector<int> twinNumbers(const std::vector<TwinGroup>& groups, PlaceKey key) {
    std::vector<int> numbers;
    for (const TwinGroup& group : groups) {
        const auto isKey = [&](const Place* place) { return place->key == key; };
        if (std::none_of(group.places.begin(), group.places.end(), isKey))
            continue;
        for (const Place* place : group.places)
            if (place->key != key)
                numbers.push_back(place->key.number);
    }
    return numbers;
}

} // namespace

std::vector<ReadBackItem> readBack(const Gathering& gathering, Half half, Answer prefer) {
    const Answer other = prefer == Answer::AsItShouldBe ? Answer::AsFound : Answer::AsItShouldBe;
    const std::vector<TwinGroup> groups = twins(gathering, half);
    std::vector<ReadBackItem> items;
    for (const Place& place : gathering.held) {
        if (place.key.half != half)
            continue;
        const auto& first = place.answer(prefer);
        const auto& second = place.answer(other);
        ReadBackItem item;
        item.key = place.key;
        item.refitted = place.answer(Answer::AsRefitted).has_value() || place.saidEmpty(Answer::AsRefitted);
        const bool firstEmpty = place.saidEmpty(prefer);
        const bool secondEmpty = place.saidEmpty(other);
        if (!first && !second && !firstEmpty && !secondEmpty)
            continue;
        item.reads = first || firstEmpty ? prefer : other;
        item.empty = firstEmpty || (!first && secondEmpty);
        item.otherEmpty = first && secondEmpty;
        if (second && (firstEmpty || (first && contradict(first->wire, second->wire))))
            item.contradicts = second->wire;
        if (!item.empty) {
            item.answer = first ? *first : *second;
            item.tag = place.tag;
            item.twinOf = twinNumbers(groups, place.key);
        }
        items.push_back(std::move(item));
    }
    return items;
}

std::string englishSentence(const ReadBackItem& item) {
    std::string sentence = "place " + std::to_string(item.key.number);
    if (item.key.slot > 1)
        sentence += ", second wire";
    sentence += ": " + (item.empty ? "empty, no wire" : englishWords(item.answer.wire.colour));
    if (const std::string terminal = text(item.answer.wire.terminal); !terminal.empty())
        sentence += ", " + terminal;
    if (!item.answer.wire.function.empty())
        sentence += ", " + item.answer.wire.function;
    if (!item.tag.empty())
        sentence += ", tag " + item.tag;
    if (item.stops())
        sentence += "; stop: " + std::string{code(item.reads)} + ", and the other answer says " +
                    (item.contradicts ? englishWords(item.contradicts->colour) : "empty, no wire");
    return sentence;
}

} // namespace undercowl::wiring
