// A wire that was said.
#include "core/talk/readback.h"
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
    const auto other =
        which_ == wiring::Answer::AsFound ? wiring::Answer::AsItShouldBe : wiring::Answer::AsFound;
    const auto stop = [&](const std::optional<colour::WireColour>& said) {
        remark_ =
            text(talk::english({talk::Sentence::Kind::Wire, {talk::contradiction(which_, said)}, {}, {}}));
    };
    if (place != nullptr && place->saidEmpty(other))
        stop(std::nullopt);
    else if (place != nullptr && place->answer(other) && place->answer(other)->wire.colour != *wire)
        stop(place->answer(other)->wire.colour);
    say(std::move(answer), tr("%1: %2").arg(words(which_), words(*wire)));
}

} // namespace undercowl::ui
