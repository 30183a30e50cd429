// A wire that was said.
#include "core/talk/sentence.h"
#include "qml/wiring/placeview.h"
#include "qml/wiring/words.h"

namespace undercowl::ui {

void PlaceView::hear(const QString& base, const QString& tracer, const QString& terminal, const QString& size,
                     const QString& function, const QString& source) {
    remark_.clear();
    const auto wire = wireColour(base, tracer);
    const auto* place = held();
    if (!wire || lacks(source))
        return;
    wiring::PlaceAnswer answer = begun();
    answer.wire.colour = *wire;
    if (const auto said = wiring::terminalFromText(utf8(terminal + u' ' + size)); said && !terminal.isEmpty())
        answer.wire.terminal = *said;
    if (!function.isEmpty())
        answer.wire.function = utf8(function);
    answer.how = wiring::HowKnown::Heard;
    answer.probability = 1;
    if (which_ == wiring::Answer::AsItShouldBe)
        answer.source = utf8(source);
    const bool asFound = which_ == wiring::Answer::AsFound;
    if (place != nullptr)
        if (const auto& other =
                place->answer(asFound ? wiring::Answer::AsItShouldBe : wiring::Answer::AsFound);
            other && other->wire.colour != *wire)
            remark_ = text(talk::english(
                {talk::Sentence::Kind::Wire,
                 {{asFound ? "talk.contradiction.should" : "talk.contradiction.found", {other->wire.colour}}},
                 {},
                 {}}));
    say(std::move(answer), tr("%1: %2").arg(words(which_), words(*wire)));
}

} // namespace undercowl::ui
