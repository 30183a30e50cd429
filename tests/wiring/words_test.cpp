#include "core/wiring/words.h"

#include <catch2/catch.hpp>

using namespace undercowl::wiring;

TEST_CASE("a wire's words are known in four languages, however they are written") {
    CHECK(englishWireWord("grau") == "grey");
    CHECK(englishWireWord("Graues") == "grey");
    CHECK(englishWireWord("WEISS") == "white");
    CHECK(englishWireWord("wei\u00df") == "white");
    CHECK(englishWireWord("hellgr\u00fcn") == "light green");
    CHECK(englishWireWord("GR\u00dcN") == "green");
    CHECK(englishWireWord("Splei\u00df") == "splice");
    CHECK(englishWireWord("blanches") == "white");
    CHECK(englishWireWord("\u0153illet") == "ring");
    CHECK(englishWireWord("azzurro") == "light blue");
    CHECK(englishWireWord("marr\u00f3n") == "brown");
    CHECK(englishWireWord("mit") == "with"); // "grey with red tracer"
    CHECK(englishWireWord("gray") == "grey");
}

TEST_CASE("a word that only begins like a colour is none") {
    for (const char* word :
         {"rotor", "rost", "grey", "red", "blaue Lampe", "", "e", "braunschweig", "\xff\xc3", "hellebore"})
        CHECK(englishWireWord(word).empty());
}
