#include "core/wiring/twins.h"

#include <algorithm>
#include <array>

namespace undercowl::wiring {
namespace {

const Wire& found(const Place* place) {
    return place->answer(Answer::AsFound)->wire;
}

bool allDifferent(std::vector<std::string> texts) {
    std::sort(texts.begin(), texts.end());
    return std::adjacent_find(texts.begin(), texts.end()) == texts.end();
}

void judge(TwinGroup& group) {
    std::vector<std::string> terminals;
    std::vector<std::string> tags;
    std::size_t untagged = 0;
    for (const Place* place : group.places) {
        terminals.push_back(text(found(place).terminal));
        if (place->tag.empty())
            ++untagged;
        else
            tags.push_back(place->tag);
    }
    const bool allKnown =
        std::none_of(terminals.begin(), terminals.end(), [](const auto& t) { return t.empty(); });
    group.apartByTerminal = allKnown && allDifferent(terminals);
    group.apartByTag = untagged <= 1 && allDifferent(tags);
}

std::string countWord(std::size_t count) {
    constexpr std::array words{"no", "one", "two", "three", "four", "five", "six"};
    return count < words.size() ? words.at(count) : std::to_string(count);
}

std::string joined(const std::vector<std::string>& parts) {
    std::string text;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (i > 0)
            text += i + 1 == parts.size() ? " and " : ", ";
        text += parts[i];
    }
    return text;
}

} // namespace

std::vector<TwinGroup> twins(const Gathering& gathering, Half half) {
    std::vector<TwinGroup> groups;
    for (const Place* place : placesOf(gathering, half, Answer::AsFound)) {
        const auto same = std::find_if(groups.begin(), groups.end(), [&](const TwinGroup& group) {
            return group.colour == found(place).colour;
        });
        if (same != groups.end())
            same->places.push_back(place);
        else
            groups.push_back({found(place).colour, half, {place}, false, false});
    }
    std::erase_if(groups, [](const TwinGroup& group) { return group.places.size() < 2; });
    for (TwinGroup& group : groups)
        judge(group);
    return groups;
}

std::string englishAdvice(const TwinGroup& group) {
    std::vector<std::string> numbers;
    std::vector<std::string> terminals;
    std::vector<std::string> tags;
    for (const Place* place : group.places) {
        numbers.push_back(std::to_string(place->key.number));
        terminals.push_back(text(found(place).terminal));
        tags.push_back(place->tag.empty() ? "no tag" : "tag " + place->tag);
    }
    const std::string head =
        countWord(group.places.size()) + " " + englishWords(group.colour) + ": places " + joined(numbers);
    if (group.apartByTag)
        return head + ": told apart by " + joined(tags);
    if (group.apartByTerminal)
        return head + ": tag them, or tell them apart by terminal: " + joined(terminals);
    return head + ": tag them before the connector is unplugged";
}

} // namespace undercowl::wiring
