// The wiring map as the owner, or the next mechanic, reads it.
#include "core/handover/sections.h"

#include <algorithm>
#include <utility>

namespace undercowl::handover {
namespace {

using wiring::Answer;
using wiring::Half;

Message heading(const wiring::Gathering& gathering) {
    const std::string places = std::to_string(gathering.places);
    if (gathering.kind != wiring::GatheringKind::Connector) {
        return say("record.wiring.other",
                   {gathering.title, std::string{wiring::code(gathering.kind)}, places});
    }
    const std::string side{wiring::code(gathering.seenFrom)};
    return gathering.latch.empty()
               ? say("record.wiring.connector", {gathering.title, places, side})
               : say("record.wiring.connector-latch", {gathering.title, places, side, gathering.latch});
}

Message placeName(wiring::PlaceKey key) {
    const std::string number = std::to_string(key.number);
    if (key.half == Half::Unit) {
        return say(key.slot > 1 ? "record.wiring.at-unit-second" : "record.wiring.at-unit", {number});
    }
    return say(key.slot > 1 ? "record.wiring.at-second" : "record.wiring.at", {number});
}

// What the wire is now, as far as anybody looked: refitted, else found, else what it should be.
const wiring::PlaceAnswer* known(const wiring::Place& place) {
    for (const Answer which : {Answer::AsRefitted, Answer::AsFound, Answer::AsItShouldBe}) {
        if (place.answer(which)) {
            return &*place.answer(which);
        }
    }
    return nullptr;
}

std::string function(const wiring::Wire& wire) {
    if (wire.din.empty()) {
        return wire.function;
    }
    return wire.function.empty() ? wire.din : wire.function + " (" + wire.din + ")";
}

Message checked(const job::Job& job, const wiring::Gathering& gathering, wiring::PlaceKey key) {
    const auto found =
        std::find_if(job.wireChecks.begin(), job.wireChecks.end(), [&](const job::WireCheck& check) {
            return check.gathering == gathering.id && check.place == key;
        });
    if (found == job.wireChecks.end()) {
        return say("record.wiring.not-checked");
    }
    return say(found->outcome == job::MatchOutcome::Matches ? "record.wiring.matches"
                                                            : "record.wiring.matches-not");
}

Row placeRow(const job::Job& job, const wiring::Gathering& gathering, const wiring::Place& place,
             const wiring::PlaceAnswer& answer) {
    const wiring::Wire& wire = answer.wire;
    return Row{{placeName(place.key), colour::code(wire.colour), colour::englishWords(wire.colour),
                wiring::text(wire.terminal), function(wire), checked(job, gathering, place.key)}};
}

// Looked at, and no wire is there.
bool empty(const wiring::Place& place) {
    return known(place) == nullptr &&
           std::any_of(place.empty.begin(), place.empty.end(), [](bool said) { return said; });
}

Row emptyRow(const job::Job& job, const wiring::Gathering& gathering, wiring::PlaceKey key) {
    const std::string none;
    return Row{{placeName(key), none, say("record.wiring.empty"), none, none, checked(job, gathering, key)}};
}

// Places that nobody could read are told as such: a gap in the table would pass for empty cavities.
Row unreadRow(Half half, int first, int last) {
    const std::string none;
    Message place = placeName({half, first, 1});
    if (last > first)
        place = say(half == Half::Unit ? "record.wiring.range-unit" : "record.wiring.range",
                    {std::to_string(first), std::to_string(last)});
    return Row{{place, none, say("record.wiring.not-read"), none, none, none}};
}

void addHalf(const job::Job& job, const wiring::Gathering& gathering, Half half, Table& table) {
    int next = 1;
    const auto gapUpTo = [&](int number) {
        if (next < number)
            table.rows.push_back(unreadRow(half, next, number - 1));
    };
    for (const wiring::Place& place : gathering.held) {
        const wiring::PlaceAnswer* answer = known(place);
        if (place.key.half != half || (answer == nullptr && !empty(place)))
            continue;
        gapUpTo(place.key.number);
        table.rows.push_back(answer == nullptr ? emptyRow(job, gathering, place.key)
                                               : placeRow(job, gathering, place, *answer));
        next = place.key.number + 1;
    }
    gapUpTo(gathering.places + 1);
}

Table tableOf(const job::Job& job, const wiring::Gathering& gathering) {
    Table table{{say("record.wiring.place"), say("record.wiring.code"), say("record.wiring.colour"),
                 say("record.wiring.end"), say("record.wiring.function"), say("record.wiring.refit")},
                {}};
    const auto knows = [&](Half half) {
        return std::any_of(gathering.held.begin(), gathering.held.end(), [&](const wiring::Place& place) {
            return place.key.half == half && (known(place) != nullptr || empty(place));
        });
    };
    // The loom's half is the one that stays on the machine; the other is told only where it was looked at.
    if (knows(Half::Loom) || !knows(Half::Unit))
        addHalf(job, gathering, Half::Loom, table);
    if (knows(Half::Unit))
        addHalf(job, gathering, Half::Unit, table);
    return table;
}

void addDisagreements(const wiring::Gathering& gathering, std::vector<Block>& blocks) {
    for (const wiring::Place& place : gathering.held) {
        const auto& found = place.answer(Answer::AsFound);
        if (!found) {
            continue;
        }
        const std::string number = std::to_string(place.key.number);
        const std::string was = colour::englishWords(found->wire.colour);
        const auto& should = place.answer(Answer::AsItShouldBe);
        if (should && should->wire.colour != found->wire.colour) {
            const std::string right = colour::englishWords(should->wire.colour);
            blocks.emplace_back(
                Paragraph{should->source.empty()
                              ? say("record.wiring.should-be", {number, was, right})
                              : say("record.wiring.should-be-source", {number, was, right, should->source}),
                          Weight::Caution});
        }
        const auto& now = place.answer(Answer::AsRefitted);
        if (now && now->wire.colour != found->wire.colour) {
            blocks.emplace_back(
                Paragraph{say("record.wiring.now", {number, was, colour::englishWords(now->wire.colour)}),
                          Weight::Caution});
        }
    }
}

} // namespace

MaybeSection wiringSection(const Subject& subject) {
    Section section{say("record.wiring.title"), {}};
    for (const wiring::Gathering& gathering : subject.job.gatherings) {
        section.blocks.emplace_back(Paragraph{heading(gathering), Weight::Strong});
        section.blocks.emplace_back(tableOf(subject.job, gathering));
        addDisagreements(gathering, section.blocks);
    }
    if (section.blocks.empty()) {
        return {};
    }
    section.blocks.emplace_back(Paragraph{say("record.wiring.note"), Weight::Plain});
    return section;
}

} // namespace undercowl::handover
