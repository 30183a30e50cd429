#include "core/wiring/carryover.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <utility>

namespace undercowl::wiring {
namespace {

// What something serves. Nothing is known when both are empty.
struct Serves {
    std::string din;
    std::string function; // lower case, single spaces

    [[nodiscard]] bool known() const { return !din.empty() || !function.empty(); }
    [[nodiscard]] std::string text() const { return din.empty() ? function : din; }
};

std::string plain(std::string_view text) {
    std::string out;
    for (const char each : text) {
        const auto letter = static_cast<unsigned char>(each);
        if (letter >= 0x80 || std::isalnum(letter) != 0)
            out += static_cast<char>(std::tolower(letter));
        else if (!out.empty() && out.back() != ' ')
            out += ' ';
    }
    if (!out.empty() && out.back() == ' ')
        out.pop_back();
    return out;
}

// As it should be outranks as found; what is not known on one half may be known on the other.
Serves servedBy(const Gathering& gathering, PlaceKey key) {
    Serves serves;
    const Half other = key.half == Half::Loom ? Half::Unit : Half::Loom;
    for (const PlaceKey& at : {key, PlaceKey{other, key.number, key.slot}}) {
        const Place* place = gathering.find(at);
        if (place == nullptr)
            continue;
        for (const Answer which : {Answer::AsItShouldBe, Answer::AsFound, Answer::AsRefitted}) {
            const auto& answer = place->answer(which);
            if (!answer)
                continue;
            if (serves.din.empty())
                serves.din = plain(answer->wire.din);
            if (serves.function.empty())
                serves.function = plain(answer->wire.function);
        }
    }
    return serves;
}

// 56a and 56b are both the headlamp, so that designations that differ outweigh words that agree.
bool same(const Serves& a, const Serves& b) {
    if (!a.din.empty() && !b.din.empty())
        return a.din == b.din;
    return !a.function.empty() && a.function == b.function;
}

template<std::size_t N>
bool holdsAny(const std::string& text, const std::array<std::string_view, N>& words) {
    return std::any_of(words.begin(), words.end(),
                       [&](std::string_view word) { return text.find(word) != std::string::npos; });
}

template<std::size_t N>
bool isAny(const std::string& text, const std::array<std::string_view, N>& words) {
    return std::find(words.begin(), words.end(), text) != words.end();
}

Sign signOf(const Serves& serves) {
    constexpr std::array<std::string_view, 12> live{"1",  "4",  "15", "30", "49", "50",
                                                    "51", "59", "61", "b",  "d",  "df"};
    constexpr std::array<std::string_view, 13> liveWords{
        "battery", "supply", "feed",   "live", "plus",      "ignition", "kill",
        "starter", "charg",  "stator", "coil", "generator", "regulator"};
    constexpr std::array<std::string_view, 15> lamps{"49a", "54",  "55", "56", "56a", "56b", "57", "57a",
                                                     "57l", "57r", "58", "c",  "l",   "r",   "58l"};
    constexpr std::array<std::string_view, 3> earthWords{"earth", "ground", "frame"};
    constexpr std::array<std::string_view, 7> lampWords{"lamp",   "light",   "signal", "indicator",
                                                        "winker", "flasher", "beam"};
    if (!serves.known())
        return Sign::Leads;
    if (serves.din == "31" || holdsAny(serves.function, earthWords))
        return Sign::Earth;
    if (isAny(serves.din, live) || holdsAny(serves.function, liveWords))
        return Sign::Carries;
    if (serves.din == "71" || holdsAny(serves.function, std::array<std::string_view, 2>{"horn", "buzzer"}))
        return Sign::Sounds;
    if (isAny(serves.din, lamps) || holdsAny(serves.function, lampWords))
        return Sign::Lights;
    return Sign::Works;
}

struct Wires {
    PlaceKey key;
    Serves serves;
    bool settled{};
};

std::vector<Wires> wiresOf(const Gathering& old) {
    std::vector<Wires> wires;
    for (const Place& place : old.held)
        if (place.key.half == Half::Loom &&
            std::any_of(place.answers.begin(), place.answers.end(), [](const auto& each) { return each; }))
            wires.push_back({place.key, servedBy(old, place.key), false});
    return wires;
}

std::vector<Wires> placesFor(const Gathering& fresh) {
    std::vector<Wires> places;
    for (int number = 1; number <= fresh.places; ++number) {
        const PlaceKey key{Half::Unit, number, 1};
        places.push_back({{Half::Loom, number, 1}, servedBy(fresh, key), false});
    }
    return places;
}

std::size_t alike(const std::vector<Wires>& among, const Serves& serves) {
    return static_cast<std::size_t>(std::count_if(
        among.begin(), among.end(), [&](const Wires& each) { return same(each.serves, serves); }));
}

void carryKnown(std::vector<Wires>& wires, std::vector<Wires>& places, CarryOver& result) {
    for (Wires& wire : wires)
        for (Wires& place : places)
            if (same(wire.serves, place.serves) && alike(wires, place.serves) == 1 &&
                alike(places, wire.serves) == 1) {
                result.carried.push_back({wire.key, place.key, wire.serves.text()});
                wire.settled = place.settled = true;
            }
}

// Where a wire that is not settled may belong: places that serve the same, or of which nothing is known.
std::vector<PlaceKey> candidates(const Wires& wire, const std::vector<Wires>& places) {
    std::vector<PlaceKey> at;
    for (const Wires& place : places)
        if (!place.settled && same(wire.serves, place.serves))
            at.push_back(place.key);
    if (!at.empty())
        return at;
    for (const Wires& place : places)
        if (!place.settled && (!wire.serves.known() || !place.serves.known()))
            at.push_back(place.key);
    return at;
}

void planTrials(const std::vector<Wires>& wires, const std::vector<Wires>& places, CarryOver& result) {
    for (const Wires& wire : wires) {
        if (wire.settled)
            continue;
        auto at = candidates(wire, places);
        if (at.empty())
            result.withoutPlace.push_back(wire.key);
        else
            result.trials.push_back({wire.key, std::move(at), signOf(wire.serves), wire.serves.text()});
    }
    std::stable_sort(result.trials.begin(), result.trials.end(), [](const Trial& a, const Trial& b) {
        return std::pair{!a.measured(), a.at.size()} < std::pair{!b.measured(), b.at.size()};
    });
    // A place that was found is not tried again, so that later wires have fewer left.
    std::vector<PlaceKey> taken;
    for (const Trial& trial : result.trials) {
        if (trial.measured())
            continue;
        const auto left = std::count_if(trial.at.begin(), trial.at.end(), [&](const PlaceKey& key) {
            return std::find(taken.begin(), taken.end(), key) == taken.end();
        });
        result.mostTrials += static_cast<std::size_t>(left);
        if (left > 0)
            taken.push_back(*std::find_if(trial.at.begin(), trial.at.end(), [&](const PlaceKey& key) {
                return std::find(taken.begin(), taken.end(), key) == taken.end();
            }));
    }
}

} // namespace

CarryOver carryOver(const Gathering& old, const Gathering& fresh) {
    CarryOver result;
    std::vector<Wires> wires = wiresOf(old);
    std::vector<Wires> places = placesFor(fresh);
    carryKnown(wires, places, result);
    planTrials(wires, places, result);
    for (const Wires& place : places) {
        const bool tried = std::any_of(result.trials.begin(), result.trials.end(), [&](const Trial& trial) {
            return std::find(trial.at.begin(), trial.at.end(), place.key) != trial.at.end();
        });
        if (!place.settled && !tried)
            result.leaveEmpty.push_back(place.key);
    }
    return result;
}

std::string_view code(Sign sign) {
    constexpr std::array<std::string_view, 6> codes{"lights", "sounds", "works", "leads", "carries", "earth"};
    return codes.at(static_cast<std::size_t>(sign));
}

} // namespace undercowl::wiring
