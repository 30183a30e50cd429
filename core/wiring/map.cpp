#include "core/wiring/map.h"

#include <algorithm>

namespace undercowl::wiring {
namespace {

constexpr std::array<std::string_view, 4> gatheringKinds{"connector", "loose terminals", "splice",
                                                         "shared earth"};
constexpr std::array<std::string_view, 2> sides{"wire side", "mating face"};
constexpr std::array<std::string_view, 2> halves{"loom", "unit"};
constexpr std::array<std::string_view, 3> answers{"as found", "as it should be", "as refitted"};
constexpr std::array<std::string_view, 5> hows{"read", "runner-up", "picked", "typed", "heard"};

template<typename Enum, std::size_t N>
std::optional<Enum> fromCode(const std::array<std::string_view, N>& codes, std::string_view text) {
    const auto found = std::find(codes.begin(), codes.end(), text);
    if (found == codes.end())
        return std::nullopt;
    return static_cast<Enum>(found - codes.begin());
}

auto position(auto& held, PlaceKey key) {
    return std::lower_bound(held.begin(), held.end(), key,
                            [](const Place& place, PlaceKey wanted) { return place.key < wanted; });
}

} // namespace

const Place* Gathering::find(PlaceKey key) const {
    const auto found = position(held, key);
    return found != held.end() && found->key == key ? &*found : nullptr;
}

Place& Gathering::at(PlaceKey key) {
    auto found = position(held, key);
    if (found == held.end() || found->key != key)
        found = held.insert(found, Place{key, {}, {}});
    return *found;
}

int seenFromOtherSide(const Gathering& gathering, int number) {
    if (gathering.kind != GatheringKind::Connector)
        return number;
    // The last row may be shorter than the others; it is mirrored within its own length.
    const int rows = std::max(1, gathering.rows);
    const int longRow = (gathering.places + rows - 1) / rows;
    const int row = (number - 1) / longRow;
    const int first = row * longRow + 1;
    const int last = std::min(gathering.places, first + longRow - 1);
    return first + last - number;
}

std::vector<const Place*> placesOf(const Gathering& gathering, Half half, Answer which) {
    std::vector<const Place*> places;
    for (const Place& place : gathering.held)
        if (place.key.half == half && place.answer(which))
            places.push_back(&place);
    return places;
}

std::string_view code(GatheringKind kind) {
    return gatheringKinds.at(static_cast<std::size_t>(kind));
}
std::string_view code(Side side) {
    return sides.at(static_cast<std::size_t>(side));
}
std::string_view code(Half half) {
    return halves.at(static_cast<std::size_t>(half));
}
std::string_view code(Answer answer) {
    return answers.at(static_cast<std::size_t>(answer));
}
std::string_view code(HowKnown how) {
    return hows.at(static_cast<std::size_t>(how));
}

std::optional<GatheringKind> gatheringKindFromCode(std::string_view text) {
    return fromCode<GatheringKind>(gatheringKinds, text);
}
std::optional<Side> sideFromCode(std::string_view text) {
    return fromCode<Side>(sides, text);
}
std::optional<Half> halfFromCode(std::string_view text) {
    return fromCode<Half>(halves, text);
}
std::optional<Answer> answerFromCode(std::string_view text) {
    return fromCode<Answer>(answers, text);
}
std::optional<HowKnown> howKnownFromCode(std::string_view text) {
    return fromCode<HowKnown>(hows, text);
}

} // namespace undercowl::wiring
