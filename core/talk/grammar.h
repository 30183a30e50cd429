// What may be said, as a grammar for a recogniser. Whatever it allows, talk::parse understands; the parser
// takes more (sizes of terminals that are seldom met), since what is not in the grammar cannot be misheard
// for it.
#pragma once

#include "core/talk/expression.h"

#include <string>

namespace undercowl::talk {

[[nodiscard]] Expression commands();
[[nodiscard]] Expression readings();
[[nodiscard]] Expression bags();
[[nodiscard]] Expression wires();

// All of them.
[[nodiscard]] Expression grammar();

// The same as a complete JSGF 1.0 text with one public rule.
[[nodiscard]] std::string grammarText(const Expression& expression);

} // namespace undercowl::talk
