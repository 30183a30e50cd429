// The core's sentences that it puts together from values, and those that stand in the midst of its code.
// Whatever can be listed by the core itself (checks, cautions, declarations of calculations ...) is not here:
// tests/language/coretexts.cpp asks for that.
#pragma once

#include <span>
#include <vector>

namespace undercowl::ui {

using Sentences = std::span<const char* const>;

[[nodiscard]] Sentences unitSentences();    // reading numbers, units, dates
[[nodiscard]] Sentences verdictSentences(); // readings, limits, instruments
[[nodiscard]] Sentences shopSentences();    // the store, spreadsheets, knowledge
[[nodiscard]] Sentences workingSentences(); // the calculations
[[nodiscard]] Sentences answerSentences();
[[nodiscard]] Sentences refusalSentences();
[[nodiscard]] Sentences photoSentences(); // reading photos and the wires in them

// All of them.
[[nodiscard]] const std::vector<Sentences>& sentences();

} // namespace undercowl::ui
