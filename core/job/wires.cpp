#include "core/job/wires.h"

#include <algorithm>
#include <string>

namespace undercowl::job {
namespace {

bool known(const wiring::Place& place) {
    return std::any_of(place.answers.begin(), place.answers.end(),
                       [](const auto& answer) { return answer.has_value(); }) ||
           place.saidEmpty(wiring::Answer::AsFound) || place.saidEmpty(wiring::Answer::AsItShouldBe);
}

std::string numberOf(wiring::PlaceKey key) {
    return std::to_string(key.number) + (key.slot > 1 ? "b" : "");
}

} // namespace

WiresLeft wiresLeft(const Job& job, const wiring::Gathering& gathering) {
    WiresLeft left;
    const auto checkOf = [&](wiring::PlaceKey key) {
        return std::find_if(job.wireChecks.begin(), job.wireChecks.end(), [&](const WireCheck& each) {
            return each.gathering == gathering.id && each.place == key;
        });
    };
    const bool loom = std::any_of(gathering.held.begin(), gathering.held.end(), [](const auto& place) {
        return place.key.half == wiring::Half::Loom && known(place);
    });
    for (const wiring::Place& place : gathering.held) {
        if (!known(place))
            continue;
        const auto check = checkOf(place.key);
        const bool asked = place.key.half == (loom ? wiring::Half::Loom : wiring::Half::Unit);
        left.known += asked ? 1 : 0;
        if (check == job.wireChecks.end()) {
            if (asked)
                left.unread.push_back(place.key);
        } else if (check->outcome == MatchOutcome::DoesNotMatch) {
            left.off.push_back(place.key);
        }
    }
    return left;
}

std::vector<Message> wiresAgainst(const WiresLeft& left) {
    std::vector<Message> against;
    for (const wiring::PlaceKey& key : left.off)
        against.push_back({key.half == wiring::Half::Unit ? "prove.against.wire-unit" : "prove.against.wire",
                           {numberOf(key)}});
    std::string numbers;
    for (const wiring::PlaceKey& key : left.unread)
        numbers += (numbers.empty() ? "" : ", ") + numberOf(key);
    if (left.unread.size() == 1)
        against.push_back({"prove.against.unread-one", {numbers}});
    else if (!numbers.empty())
        against.push_back({"prove.against.unread", {numbers}});
    return against;
}

std::vector<const wiring::Gathering*> unreadGatherings(const Job& job, const StripStep& step) {
    std::vector<const wiring::Gathering*> found;
    for (const wiring::Gathering& gathering : job.gatherings)
        if (gathering.step == step.id && !wiresLeft(job, gathering).none())
            found.push_back(&gathering);
    return found;
}

} // namespace undercowl::job
