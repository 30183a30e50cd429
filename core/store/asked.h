// What was typed into the search, as the words that are looked for.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace undercowl::store {

// One word of it, as the index is asked.
struct Asked {
    std::string typed;   // in quotes
    std::string english; // what it says of a wire in German, French, Italian or Spanish; else empty
};

// Each word in quotes, so that nothing in it is taken as query syntax; those without a letter or digit are
// passed over. From five words on it may be a question, "where did I see green with a pink tracer on a ring
// terminal?": what such a sentence is made of beside what it asks for is passed over too, unless nothing
// would be left. Wires are kept by code and in English: "hellblau" and "gris-rojo" ask for these words too.
[[nodiscard]] std::vector<Asked> askedFor(std::string_view typed);

} // namespace undercowl::store
