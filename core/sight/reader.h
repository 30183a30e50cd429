// Reads wires in a photo: at a tap, or along a stroke.
#pragma once

#include "core/sight/photo.h"
#include "core/sight/reading.h"

#include <tl/expected.hpp>

#include <atomic>
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

private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace undercowl::sight
