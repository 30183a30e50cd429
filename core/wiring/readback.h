// Reading the wiring back on refit, one wire after the other.
#pragma once

#include "core/wiring/map.h"

#include <optional>
#include <string>
#include <vector>

namespace undercowl::wiring {

struct ReadBackItem {
    PlaceKey key;
    Answer reads{}; // which answer is read to the mechanic
    PlaceAnswer answer;
    std::optional<Wire>
        contradicts;   // the other of 'as found' and 'as it should be' where the two differ: stop there
    bool otherEmpty{}; // the other says that no wire is there, but a wire is read: stop there too
    std::string tag;
    std::vector<int> twinOf; // numbers of the places that look alike; empty when there is none
    bool refitted{};         // an 'as refitted' answer is there already
    bool empty{};            // the place was said to hold no wire; 'answer' says nothing then

    [[nodiscard]] bool stops() const { return contradicts.has_value() || otherEmpty; }
    friend bool operator==(const ReadBackItem&, const ReadBackItem&) = default;
};

// The items of one half in order of place. With 'prefer' AsItShouldBe that answer is read where there is one,
// 'empty' among them, and 'as found' elsewhere; with AsFound the other way about. Precondition: prefer is not
// AsRefitted.
[[nodiscard]] std::vector<ReadBackItem> readBack(const Gathering& gathering, Half half, Answer prefer);

// English sentence: "place 3: green with white tracer, blade 6.3, stop lamp".
[[nodiscard]] std::string englishSentence(const ReadBackItem& item);

} // namespace undercowl::wiring
