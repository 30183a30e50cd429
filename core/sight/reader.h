// Reads wires in a photo: at a tap, or along a stroke.
#pragma once

#include "core/sight/photo.h"
#include "core/sight/reading.h"

#include <tl/expected.hpp>

#include <cstddef>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace undercowl::sight {

// A neutral card in view. Reflectance 0.18 is the photographer's grey, about 0.88 white paper.
struct Card {
    Box box;
    double reflectance{0.18};
};

// A wire whose colour the mechanic has confirmed: it calibrates the light for the rest of the photo.
struct Confirmed {
    Point at;
    colour::WireColour wire;
};

struct ReadOptions {
    std::optional<Card> card;
    std::vector<Confirmed> confirmed;
};

// Long work asks this now and then; when it answers true the work stops and returns nothing.
using Cancelled = std::function<bool()>;

// Which neighbour of a wire: the one to the left, or above where the wire lies more level than steep; or the
// other.
enum class Side : std::uint8_t { Before, After };

// Wires that were found without a stroke.
struct Proposal {
    std::vector<WireReading> wires; // across the way that most of them run, or along the mouth
    // For each of them: the wire that it may be again, an index, where wires come out of a sleeve on both
    // sides and look alike. The others are each there once.
    std::vector<std::optional<std::size_t>> perhaps;
    std::vector<Point> unfollowed; // here is wire that could not be followed: a stroke is needed there

    [[nodiscard]] bool complete() const { return !wires.empty() && unfollowed.empty(); }
};

// One opened photo. Not for use from several threads at once.
class Reader {
public:
    explicit Reader(Photo photo, ReadOptions options = {});
    ~Reader();
    Reader(Reader&&) noexcept;
    Reader& operator=(Reader&&) noexcept;

    // Looks over the whole photo, so that taps and strokes are quick from then on; without it they look where
    // they are. Takes about a second; what was done before 'cancelled' answered true is kept.
    void lookOver(const Cancelled& cancelled = {});

    // Adds a confirmed wire; later readings use it.
    void confirm(const Confirmed& wire);

    // The wire nearest to the point, also when the tap lands beside it. Fails, with the remedy in words, when
    // the point lies outside the photo.
    [[nodiscard]] tl::expected<WireReading, std::string> tap(Point at);

    // All wires that the stroke crosses, in stroke order, each once. Fails when the stroke has fewer than two
    // different points or leaves the photo.
    [[nodiscard]] tl::expected<std::vector<WireReading>, std::string> sweep(const Polyline& along,
                                                                            const Cancelled& cancelled = {});

    // The next wire across from one that was read, on either side; nothing when there is none within some
    // widths, or when no wire was read.
    [[nodiscard]] std::optional<WireReading> beside(const WireReading& from, Side side);

    // All wires that can be followed. Looks over the whole photo first, see lookOver(). With the 'mouth' of a
    // connector, a line of at least two points, only those that come out of it. Nothing when cancelled. Fails
    // when the mouth leaves the photo.
    [[nodiscard]] tl::expected<Proposal, std::string> propose(const Polyline& mouth = {},
                                                              const Cancelled& cancelled = {});

private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace undercowl::sight
