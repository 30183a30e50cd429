// What is said to the ear in its benchmark, and what is meant by it.
#pragma once

#include "core/talk/intent.h"

#include <string>
#include <vector>

namespace undercowl::bench {

struct SpokenPhrase {
    std::string words;
    talk::Intent meant;
};

// 220 sentences of the grammar, drawn from it with this seed: 30 commands (each three times), 80 readings, 25
// bags, 85 wires. None that the parser refuses.
[[nodiscard]] std::vector<SpokenPhrase> phrases(unsigned seed);

// Talk of a workshop that no sentence of the grammar is: much of it shares words with the grammar. The two
// halves have no sentence in common, so that thresholds set by one can be judged by the other.
[[nodiscard]] std::vector<std::string> otherTalk(bool heldBack);

} // namespace undercowl::bench
