// The wiring map: which wire sits in which place.
//
// A gathering is whatever holds wires together: a connector with its two halves, a row of loose terminals, a
// splice, a shared earth. Its places are counted from 1. A place may hold two wires (two in one cavity or one
// crimp): the second has slot 2. For each wire there are up to three answers, kept apart, since unknown hands
// may have wired it wrong.
#pragma once

#include "core/colour/insulation.h"
#include "core/wiring/terminal.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::wiring {

struct Wire {
    colour::WireColour colour;
    Terminal terminal;
    std::optional<double> sizeMm2; // conductor cross-section
    std::string function;          // "stop lamp", as typed
    std::string din;               // terminal designation by DIN 72552, "54"; empty if unknown

    friend bool operator==(const Wire&, const Wire&) = default;
};

enum class GatheringKind : std::uint8_t { Connector, LooseTerminals, Splice, SharedEarth };
enum class Side : std::uint8_t {
    WireSide,
    MatingFace
};                                             // from where it was seen; numbering mirrors between the two
enum class Half : std::uint8_t { Loom, Unit }; // loom side, and the side of the switch, lamp or unit
enum class Answer : std::uint8_t { AsFound, AsItShouldBe, AsRefitted };
enum class HowKnown : std::uint8_t {
    Read,
    RunnerUp,
    Picked,
    Typed,
    Heard
}; // reading confirmed, a runner-up of it, by hand, by voice

// Relative to the upright photo: 0,0 top left, 1,1 bottom right.
struct PhotoMark {
    std::string photo; // id of the photo
    double x{};
    double y{};

    friend bool operator==(const PhotoMark&, const PhotoMark&) = default;
};

struct PlaceAnswer {
    Wire wire;
    HowKnown how{};
    double probability{1}; // of the reading that was confirmed; 1 for what was entered by hand
    std::string source;    // for AsItShouldBe: "manual, page 7-12", "this shop's record"; empty otherwise
    std::optional<PhotoMark> mark;
    std::string entry; // id of the journal entry that said it

    friend bool operator==(const PlaceAnswer&, const PlaceAnswer&) = default;
};

struct PlaceKey {
    Half half{};
    int number{1}; // from 1
    int slot{1};   // 1, or 2 for the second wire of the place

    friend auto operator<=>(const PlaceKey&, const PlaceKey&) = default;
};

struct Place {
    PlaceKey key;
    std::array<std::optional<PlaceAnswer>, 3> answers; // index: Answer
    std::string tag;                                   // tied to the wire so that twins can be told apart
    std::array<bool, 3> empty{}; // index: Answer; somebody looked and said that no wire is there: not the
                                 // same as nothing known. Never beside an answer of the same kind.

    [[nodiscard]] const std::optional<PlaceAnswer>& answer(Answer which) const {
        return answers.at(static_cast<std::size_t>(which));
    }
    [[nodiscard]] std::optional<PlaceAnswer>& answer(Answer which) {
        return answers.at(static_cast<std::size_t>(which));
    }
    [[nodiscard]] bool saidEmpty(Answer which) const { return empty.at(static_cast<std::size_t>(which)); }
    friend bool operator==(const Place&, const Place&) = default;
};

struct Gathering {
    std::string id;
    std::string title; // "right switch cluster, 6-place"
    GatheringKind kind{};
    int places{};                   // number of cavities or terminals, 1 to 60
    int rows{1};                    // cavities lie in this many rows, counted row by row
    Side seenFrom{};                // the side that the numbering is seen from
    std::string latch;              // where the latch or key sits: "top", "beside place 1"; empty if none
    std::optional<PhotoMark> first; // place 1 on the photo
    std::string photo;              // id of the photo that the places were read from
    std::string step;               // strip step that it belongs to; empty if none
    std::string condition{};        // as found: "green on three pins, latch broken"
    std::string treated{};          // what was done about it: "cleaned, contact grease"
    std::string replaces{};         // the gathering in whose place this new part came; empty if none
    std::vector<Place> held;        // sorted by key; only places about which something is known

    [[nodiscard]] const Place* find(PlaceKey key) const; // null if nothing is known; owned by the gathering
    Place& at(PlaceKey key);                             // adds it in its sorted position if new
    friend bool operator==(const Gathering&, const Gathering&) = default;
};

// The number that the place carries when the connector is looked at from the other side: each row is read
// backwards. Loose terminals, splices and earths do not mirror. Precondition: 1 <= number <= places.
[[nodiscard]] int seenFromOtherSide(const Gathering& gathering, int number);

// The places of one half about which the given answer says something, in order of place; owned by the
// gathering.
[[nodiscard]] std::vector<const Place*> placesOf(const Gathering& gathering, Half half, Answer which);

// Codes are what entries, archives and JSON write; the readers take them back and answer nothing for anything
// else.
[[nodiscard]] std::string_view
code(GatheringKind kind);                       // "connector", "loose terminals", "splice", "shared earth"
[[nodiscard]] std::string_view code(Side side); // "wire side", "mating face"
[[nodiscard]] std::string_view code(Half half); // "loom", "unit"
[[nodiscard]] std::string_view code(Answer answer); // "as found", "as it should be", "as refitted"
[[nodiscard]] std::string_view code(HowKnown how);  // "read", "runner-up", "picked", "typed", "heard"
[[nodiscard]] std::optional<GatheringKind> gatheringKindFromCode(std::string_view text);
[[nodiscard]] std::optional<Side> sideFromCode(std::string_view text);
[[nodiscard]] std::optional<Half> halfFromCode(std::string_view text);
[[nodiscard]] std::optional<Answer> answerFromCode(std::string_view text);
[[nodiscard]] std::optional<HowKnown> howKnownFromCode(std::string_view text);

} // namespace undercowl::wiring
