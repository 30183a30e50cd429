// What the wiring screens say, in the user's language: words for what core/wiring and core/sight name by
// value.
#pragma once

#include "core/sight/reading.h"
#include "core/wiring/map.h"
#include "qml/shell/words.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <span>

namespace undercowl::ui {

// "green, white tracer".
[[nodiscard]] QString words(const colour::WireColour& wire);
[[nodiscard]] QString baseCode(const colour::WireColour& wire);
[[nodiscard]] QString tracerCode(const colour::WireColour& wire); // empty without a tracer
// Nothing when the base is not one of the fourteen; an unknown tracer counts as none.
[[nodiscard]] std::optional<colour::WireColour> wireColour(const QString& base, const QString& tracer);

// Why a reading is not sure, with the remedy: "glare covers it: tilt the phone".
[[nodiscard]] QString words(sight::Doubt doubt);
// "sure", "not sure: brown or red", or "no wire found".
[[nodiscard]] QString sureness(std::span<const sight::Candidate> candidates, bool sure);

[[nodiscard]] QString words(wiring::GatheringKind kind);
[[nodiscard]] QString emptyWords(); // of a place that holds no wire
[[nodiscard]] QString words(wiring::Side side);
[[nodiscard]] QString words(wiring::Half half);
[[nodiscard]] QString words(wiring::Answer answer);
[[nodiscard]] QString words(wiring::TerminalKind kind);
[[nodiscard]] QString words(const wiring::Terminal& terminal); // "blade 6.3"; empty for an unknown one

// "place 3", or "place 3, second wire".
[[nodiscard]] QString words(const wiring::PlaceKey& key);
// "blade 6.3, 0.75 mm², stop lamp, 54": what is known of the wire beside its colour.
[[nodiscard]] QString details(const wiring::Wire& wire);

} // namespace undercowl::ui
