// What a wire's colours and ends are called in German, French, Italian and Spanish, for a search in what the
// core writes in English. Common words of each trade, from memory.
#pragma once

#include <string_view>

namespace undercowl::wiring {

// "hellgrün", "Hellgruen" or "verte" to "light green" and "green": one word, in any letter case, with or
// without its accents, bent as adjectives are. Empty for a word that is not known, and for English ones but
// "gray" and "purple".
[[nodiscard]] std::string_view englishWireWord(std::string_view word);

} // namespace undercowl::wiring
