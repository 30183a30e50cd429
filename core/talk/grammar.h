// What may be said, as a grammar for a recogniser. Whatever it allows, talk::parse understands; the parser
// takes more (sizes of terminals that are seldom met), since what is not in the grammar cannot be misheard
// for it.
#pragma once

#include "core/talk/expression.h"

#include <string>
#include <string_view>

namespace undercowl::talk {

[[nodiscard]] Expression commands();
[[nodiscard]] Expression readings();
[[nodiscard]] Expression bags();
[[nodiscard]] Expression wires();

// All of them.
[[nodiscard]] Expression grammar();

// What is said to be listened to when no button is held. Made of words that the ear knows well, in an order
// that nothing in a workshop gives occasion to; no sentence of the grammar.
[[nodiscard]] std::string_view wakePhrase();

// The same as a complete JSGF 1.0 text with one public rule.
[[nodiscard]] std::string grammarText(const Expression& expression);

} // namespace undercowl::talk
