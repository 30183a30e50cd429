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
    const auto other = asFound ? wiring::Answer::AsItShouldBe : wiring::Answer::AsFound;
    if (place != nullptr) {
        talk::Sentence stop{talk::Sentence::Kind::Wire, {}, {}, {}};
        if (place->saidEmpty(other))
            stop.phrases = {
                {asFound ? "talk.contradiction.should.empty" : "talk.contradiction.found.empty", {}}};
        else if (const auto& said = place->answer(other); said && said->wire.colour != *wire)
            stop.phrases = {
                {asFound ? "talk.contradiction.should" : "talk.contradiction.found", {said->wire.colour}}};
        if (!stop.phrases.empty())
            remark_ = text(talk::english(stop));
    }
    say(std::move(answer), tr("%1: %2").arg(words(which_), words(*wire)));
}

} // namespace undercowl::ui
